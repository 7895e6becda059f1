/**
 * Characters that a person reads as a plain Latin letter, by that letter. Full-width, mathematical and circled letters
 * are left to NFKC, accents to NFD.
 * @source own, after the idea of Unicode Technical Standard #39, section 4 (confusable detection); from memory, not complete
 */
const LOOK_ALIKES: Readonly<Record<string, string>> = {
  a: 'аαɑᴀᎪⱥ⍺ꓮ',
  b: 'вьʙᏴƀɓβᏏꓐ',
  c: 'сϲᴄᏟⲥƈȼꓚ',
  d: 'ԁᏧɖɗđժᴅᎠꓓ',
  e: 'еєҽεɛəɇᴇᎬⲉ℮ꓰ€',
  f: 'ƒẝғϝꞙꬵքꓝ',
  g: 'ɡցɢǥᶃԍᏀꓖ',
  h: 'һհнʜᎻħɦᏂꓧ',
  i: 'іıɩιɪᎥӏⲓɨꓲ',
  j: 'јϳɉᴊᎫꓙ',
  k: 'кκᴋᏦƙⲕқҝꓗ',
  l: 'ʟᏞłɭƚɫǀ|וꓡ',
  m: 'мᴍᎷⲙɱꓟ',
  n: 'пηոռɴƞɲꓠ',
  o: 'оοօσᴏ০੦૦௦๐໐ⲟøɵꬽ○◯ꓳ',
  p: 'рρᴘᏢⲣþƥꓑ',
  q: 'ԛգզɋ',
  r: 'гʀᎡᏒⲅꭇɍɾꓣ',
  s: 'ѕꜱᏚʂտșȿꓢ$',
  t: 'тτᴛᎢⲧƭŧꓔ',
  u: 'υսᴜʋцųʉ∪ꓴ',
  v: 'ѵνᴠᏙⅴ∨ꓦ',
  w: 'ѡԝωᴡᎳɯաꓪ',
  x: 'хχ×ⲭꓫ',
  y: 'уγүყʏᎩƴɏꓬ',
  z: 'ᴢᏃƶʐȥꓜ',
  ss: 'ß',
};

const LETTERS = new Map(
  Object.entries(LOOK_ALIKES).flatMap(([letter, alike]) =>
    [...alike].map((one) => [one.toLowerCase(), letter] as const),
  ),
);
/** Letters drawn as white on a dark disc or square, and those that make flags: 26 in a row from each of these. */
const PICTURED_FROM = [0x1f150, 0x1f170, 0x1f1e6] as const;

/**
 * Text as an eye reads it, in plain small letters: look-alikes, accents, widths and unseen characters make no difference.
 * @param text any text
 * @returns the folded text; only for comparing, never for showing
 * @source Unicode Standard Annex #15 (NFKC, NFD)
 * @example
 * foldLookAlikes('Rеlease'); // 'release', though the first e is Cyrillic
 */
export function foldLookAlikes(text: string): string {
  const plain = text.normalize('NFKC').replace(UNSEEN, '').toLowerCase().normalize('NFD').replace(/\p{M}/gu, '');
  return Array.from(plain, (one) => LETTERS.get(one) ?? picturedLetter(one) ?? one).join('');
}

/** Characters that are not seen: format characters, fillers, and control characters that are no white space. */
export const UNSEEN = /[\p{Cf}\p{Default_Ignorable_Code_Point}\u2800]|(?![\t\n\r])\p{Cc}/gu;

function picturedLetter(one: string): string | undefined {
  const code = one.codePointAt(0) ?? 0;
  const from = PICTURED_FROM.find((first) => code >= first && code < first + 26);
  return from === undefined ? undefined : String.fromCharCode('a'.charCodeAt(0) + code - from);
}
