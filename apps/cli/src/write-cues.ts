import { renderCueTrack } from '@larkhold/cues';
import { layOut } from '@larkhold/engine';
import { reasonWords, say } from '@larkhold/words';
import { writeFile } from './open-file.ts';
import { CommandEnd, exitCodes, type Surroundings } from './surroundings.ts';
import { type DrillWish, todaysDrill } from './todays-drill.ts';

/**
 * `larkhold cues`: a day's drill as a sound file of tones, WAV, 16-bit mono. Spoken words need a browser's decoder: the app writes those.
 * @param path a backup or a program file, `-` for standard input
 * @param options the wish, and `output`: where to
 * @param around the surroundings
 * @throws CommandEnd where there is nothing to do that day
 */
export async function writeCues(
  path: string,
  options: DrillWish & { output: string },
  around: Surroundings,
): Promise<void> {
  const { prescription } = await todaysDrill(path, options, around);
  const timeline = layOut(prescription);
  if (timeline.cues.length === 0) {
    const why = prescription.reasons.map((reason) => reasonWords(reason));
    throw new CommandEnd(exitCodes.wrong, [say('prompt.noDrill', { on: prescription.date }), ...why].join(' '));
  }
  const onProgress = around.isTerminal
    ? (doneRatio: number) => around.complain(`\r${Math.round(doneRatio * 100)} %${doneRatio === 1 ? '\n' : ''}`)
    : undefined;
  const track = await renderCueTrack(timeline, { voice: 'tones', ...(onProgress && { onProgress }) });
  await writeFile(options.output, new Uint8Array(await track.arrayBuffer()), around);
}
