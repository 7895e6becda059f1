import { formatDistance, say } from '@larkhold/words';

/** Least height that is read with ease, minutes of arc. ISO 9241-3 asks for 16 at least and 20 to 22 better. */
export const EASY_ARC_MINUTES = 20;
/** Least height that is read at all with good eyes and light, minutes of arc (ISO 9241-3). */
export const LEAST_ARC_MINUTES = 16;
/** A CSS pixel where the device's own is not known: 96 to the inch, millimetres. */
export const USUAL_PIXEL_MM = 25.4 / 96;
/** A CSS pixel of most phones, millimetres. 160 to the inch is what Android calls a density-independent pixel; others come near it. */
export const PHONE_PIXEL_MM = 25.4 / 160;
/** Touch screens no wider than this on the shorter side are phones, CSS pixels. Common practice, no source. */
const PHONE_SIDE_PX = 600;
/** Height of a digit as a share of the font size. Own: measured on common plain typefaces, 0.70 to 0.74. */
export const DIGIT_HEIGHT_RATIO = 0.71;

/**
 * How tall a character must be.
 * @param distanceM from eye to character, metres; by a mirror the whole path, eye to mirror to screen
 * @param arcMinutes the angle it fills, minutes of arc
 * @returns height, millimetres
 * @throws RangeError when a number is not above 0
 * @source ISO 9241-3:1992, visual display requirements, character height: h = 2 d tan(a / 2)
 */
export function characterHeightMm(distanceM: number, arcMinutes: number): number {
  checkAbove0({ distanceM, arcMinutes });
  return 2 * distanceM * 1000 * Math.tan((arcMinutes / 60 / 180) * (Math.PI / 2));
}

/**
 * The angle that a character fills.
 * @param heightMm its height, millimetres
 * @param distanceM from eye to character, metres
 * @returns minutes of arc
 * @throws RangeError when a number is not above 0
 */
export function arcMinutesOf(heightMm: number, distanceM: number): number {
  checkAbove0({ heightMm, distanceM });
  return (2 * Math.atan(heightMm / (2 * distanceM * 1000)) * 180 * 60) / Math.PI;
}

/**
 * How large a CSS pixel most likely is: no browser tells.
 * @param shorterSidePx the screen's shorter side, CSS pixels
 * @param isTouch whether a finger is the main pointer
 * @returns millimetres
 */
export function likelyPixelMm(shorterSidePx: number, isTouch: boolean): number {
  return isTouch && shorterSidePx <= PHONE_SIDE_PX ? PHONE_PIXEL_MM : USUAL_PIXEL_MM;
}

/** How the archer looks at the screen. */
export interface Viewing {
  /** Metres from the eye to the screen; by a mirror from the eye to the mirror. */
  distanceM: number;
  /** Metres from the mirror back to the screen, where the archer looks by a mirror. */
  mirrorToScreenM?: number;
}

/**
 * The way that light goes from screen to eye.
 * @param viewing how the archer looks at the screen
 * @returns metres
 */
export function sightPathM(viewing: Viewing): number {
  return viewing.distanceM + (viewing.mirrorToScreenM ?? 0);
}

/**
 * The font size that words need to be read at all from where the archer stands.
 * @param viewing how the archer looks at the screen
 * @param pixelMm a CSS pixel on this device, millimetres
 * @returns CSS pixels
 * @throws RangeError when a number is not above 0
 */
export function leastFontPx(viewing: Viewing, pixelMm: number = USUAL_PIXEL_MM): number {
  return characterHeightMm(sightPathM(viewing), LEAST_ARC_MINUTES) / (pixelMm * DIGIT_HEIGHT_RATIO);
}

/** Whether the digits can be read from where the archer stands. */
export interface Legibility {
  /** Font size that the digits need, CSS pixels. */
  neededPx: number;
  /** What the digits fill at the size they get, minutes of arc. */
  arcMinutes: number;
  /** Plain words when the screen cannot do it. */
  warning?: string;
}

/**
 * Whether digits of a size can be read from where the archer stands.
 * @param viewing how the archer looks at the screen
 * @param fontPx the font size the screen has room for, CSS pixels
 * @param pixelMm a CSS pixel on this device, millimetres
 * @returns the size needed, the angle reached, and a warning when it falls short
 * @throws RangeError when a number is not above 0
 */
export function digitLegibility(viewing: Viewing, fontPx: number, pixelMm: number = USUAL_PIXEL_MM): Legibility {
  checkAbove0({ fontPx, pixelMm });
  const pathM = sightPathM(viewing);
  const neededPx = characterHeightMm(pathM, EASY_ARC_MINUTES) / (pixelMm * DIGIT_HEIGHT_RATIO);
  const arcMinutes = arcMinutesOf(fontPx * pixelMm * DIGIT_HEIGHT_RATIO, pathM);
  if (fontPx >= neededPx) return { neededPx, arcMinutes };
  const reachM = pathM * (fontPx / neededPx);
  const key = viewing.mirrorToScreenM ? 'drill.tooSmallByMirror' : 'drill.tooSmall';
  return { neededPx, arcMinutes, warning: say(key, { distance: metres(pathM), reach: metres(reachM) }) };
}

function metres(distanceM: number): string {
  return formatDistance(Math.floor(distanceM * 10) / 10, 'metric');
}

function checkAbove0(numbers: Record<string, number>): void {
  for (const [name, value] of Object.entries(numbers)) {
    if (!(value > 0 && Number.isFinite(value))) throw new RangeError(`${name} is ${value}; expected a number above 0`);
  }
}
