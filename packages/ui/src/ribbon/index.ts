export { LarkHoldRibbon } from './lark-hold-ribbon.ts';
export { LarkRepAnswer } from './lark-rep-answer.ts';
export { placeRibbon, RIBBON, type RibbonPlaces } from './ribbon-places.ts';
export { isApart, isAsAsked, type RibbonRep, type ShortReason } from './ribbon-rep.ts';
export { limbPath, tallestOf } from './ribbon-strokes.ts';
