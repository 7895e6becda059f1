/**
 * Says words with a voice that is on the device: what is said at full draw neither leaves it nor waits for a network. Where the device has no
 * such voice in the language, nothing is said.
 *
 * @param words what to say
 * @param language of the words, a BCP 47 tag
 * @param loudness 0..1
 * @returns true when a voice took the words
 */
export function speakCall(words: string, language: string, loudness: number): boolean {
  const voice = localVoice(language);
  if (!voice) return false;
  const utterance = new SpeechSynthesisUtterance(words);
  utterance.voice = voice;
  utterance.lang = voice.lang;
  utterance.volume = loudness;
  globalThis.speechSynthesis.speak(utterance);
  return true;
}

/**
 * Whether the device has a voice of its own in a language.
 *
 * @param language a BCP 47 tag
 */
export function canSpeak(language: string): boolean {
  return localVoice(language) !== undefined;
}

/** Silences the device's voice at once. */
export function stopSpeaking(): void {
  globalThis.speechSynthesis?.cancel();
}

/** A voice of the very region first, then of the language; some browsers write `en_US`. */
function localVoice(language: string): SpeechSynthesisVoice | undefined {
  // Some devices have the interface and no voice; speaking then fails without a word.
  const voices = (globalThis.speechSynthesis?.getVoices() ?? []).filter((voice) => voice.localService);
  const tagOf = (voice: SpeechSynthesisVoice) => voice.lang.replaceAll('_', '-').toLowerCase();
  const wanted = language.toLowerCase();
  const primary = wanted.split('-')[0];
  return (
    voices.find((voice) => tagOf(voice) === wanted) ??
    voices.find((voice) => voice.default && tagOf(voice).split('-')[0] === primary) ??
    voices.find((voice) => tagOf(voice).split('-')[0] === primary)
  );
}
