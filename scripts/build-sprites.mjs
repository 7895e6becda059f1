// Builds the spoken words of one language: phrases.json in, pack.json, pack.webm and pack.mp3 out.
// Usage: node scripts/build-sprites.mjs [folder]   (default packages/cues/sprites/en; needs espeak-ng and ffmpeg)
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const sampleRate = 22050; // what espeak-ng gives
const gapMs = 200; // so that no decoder's padding lets one phrase run into the next
const silenceLevel = 0.012;
const peakLevel = 0.75;
const wavHeaderBytes = 44;

/** The phrase's samples, -1..1, without silence at either end, at one loudness. */
function speak(words, { voice, wordsPerMinute }) {
  const wav = execFileSync('espeak-ng', ['-v', voice, '-s', String(wordsPerMinute), '--stdout', words]);
  const bytes = wav.subarray(wavHeaderBytes);
  const samples = Float32Array.from({ length: bytes.length >> 1 }, (_, index) => bytes.readInt16LE(index * 2) / 32768);
  const isHeard = (sample) => Math.abs(sample) > silenceLevel;
  const heard = samples.subarray(samples.findIndex(isHeard), samples.findLastIndex(isHeard) + 1);
  const peak = heard.reduce((most, sample) => Math.max(most, Math.abs(sample)), 0);
  return heard.map((sample) => (sample * peakLevel) / peak);
}

function wavOf(samples) {
  const bytes = Buffer.alloc(wavHeaderBytes + samples.length * 2);
  bytes.write('RIFF', 0);
  bytes.writeUInt32LE(bytes.length - 8, 4);
  bytes.write('WAVEfmt ', 8);
  bytes.writeUInt32LE(16, 16);
  bytes.writeUInt16LE(1, 20);
  bytes.writeUInt16LE(1, 22);
  bytes.writeUInt32LE(sampleRate, 24);
  bytes.writeUInt32LE(sampleRate * 2, 28);
  bytes.writeUInt16LE(2, 32);
  bytes.writeUInt16LE(16, 34);
  bytes.write('data', 36);
  bytes.writeUInt32LE(samples.length * 2, 40);
  samples.forEach((sample, index) => {
    bytes.writeInt16LE(Math.round(sample * 32767), wavHeaderBytes + index * 2);
  });
  return bytes;
}

const folder = process.argv[2] ?? fileURLToPath(new URL('../packages/cues/sprites/en', import.meta.url));
const source = JSON.parse(readFileSync(join(folder, 'phrases.json'), 'utf8'));
const gap = new Float32Array(Math.round((gapMs / 1000) * sampleRate));
const parts = [gap];
const sprites = [];
let count = gap.length;
for (const phrase of source.phrases) {
  // A phrase is what a cue brings, and what is said for it where that is another language.
  const { words, say } = typeof phrase === 'string' ? { words: phrase, say: phrase } : phrase;
  const samples = speak(say, source);
  const startMs = Math.floor((count / sampleRate) * 1000) - 20;
  // Room on both sides for the encoder's own padding; the player cuts to the first sample it can hear.
  sprites.push({ words, startMs, durationMs: Math.ceil((samples.length / sampleRate) * 1000) + 100 });
  parts.push(samples, gap);
  count += samples.length + gap.length;
}
const work = mkdtempSync(join(tmpdir(), 'sprites-'));
const wav = join(work, 'pack.wav');
writeFileSync(wav, wavOf(parts.flatMap((part) => [...part])));
const exact = ['-fflags', '+bitexact', '-flags', '+bitexact', '-map_metadata', '-1'];
const encode = (name, options) =>
  execFileSync('ffmpeg', ['-y', '-v', 'error', '-i', wav, '-ac', '1', ...options, ...exact, join(folder, name)]);
encode('pack.webm', ['-c:a', 'libopus', '-b:a', '12k', '-application', 'voip']);
encode('pack.mp3', ['-c:a', 'libmp3lame', '-b:a', '16k', '-ar', '16000']);
rmSync(work, { recursive: true });
const { language, kinds } = source;
const files = ['pack.webm', 'pack.mp3'];
writeFileSync(
  join(folder, 'pack.json'),
  `${JSON.stringify({ format: 'larkhold-sprites', version: 1, language, files, kinds, sprites }, null, 1)}\n`,
);
for (const name of ['pack.json', ...files]) console.log(`${name} ${statSync(join(folder, name)).size} bytes`);
console.log(`${sprites.length} phrases, ${Math.round(count / sampleRate)} s`);
