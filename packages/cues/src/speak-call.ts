/**
 * Says words with the device's own voice, where it has one.
 *
 * @param words what to say
 * @param loudness 0..1
 * @returns true when a voice took the words
 */
export function speakCall(words: string, loudness: number): boolean {
  const speech = globalThis.speechSynthesis;
  // Some devices have the interface and no voice; speaking then fails without a word.
  if (!speech || speech.getVoices().length === 0) return false;
  const utterance = new SpeechSynthesisUtterance(words);
  utterance.volume = loudness;
  speech.speak(utterance);
  return true;
}

/** Whether the device has a voice of its own. */
export function canSpeak(): boolean {
  return (globalThis.speechSynthesis?.getVoices().length ?? 0) > 0;
}

/** Silences the device's voice at once. */
export function stopSpeaking(): void {
  globalThis.speechSynthesis?.cancel();
}
