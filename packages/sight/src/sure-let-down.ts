/**
 * How far hand and elbow are off, and how far the draw gives way, in a let-down that is sure before the median of three shows it. Torso lengths. The elbow is free
 * and leads: a twitch of 4 cm takes it 0.14 away, and the draw gives way by 0.08. The hand's patch is half face, which stays: it follows late, and a
 * twitch of 2 cm takes it 0.03 away.
 */
const HAND_SURELY_MOVED = 0.03;
const SURELY = [
  { elbow: 0.12, gaveWay: 0.09 },
  { elbow: 0.16, gaveWay: 0.05 },
];

/**
 * Whether what has moved can be nothing but a let-down, in one frame. All in torso lengths.
 * @param moved `hand` and `elbow`: how far their pixels are from where they were a moment ago; `gaveWay`: by how much the model sees the draw give way
 * @returns true where no twitch or poor frame goes so far
 */
export function isSureLetDown({ hand, elbow, gaveWay }: { hand: number; elbow: number; gaveWay: number }): boolean {
  return hand > HAND_SURELY_MOVED && SURELY.some((least) => elbow > least.elbow && gaveWay > least.gaveWay);
}
