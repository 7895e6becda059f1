export * from './box-adapter.ts';
export * from './box-link.ts';
export { meetBox, type Round, type RoundParts } from './box-round.ts';
export { type BoxTrouble, type BoxTroubleKind, describeBoxTrouble } from './box-trouble.ts';
export { createFolderBox } from './folder-box.ts';
export { createHttpBox, type HttpBoxOptions } from './http-box.ts';
export { createMemoryBox } from './memory-box.ts';
export * from './pairing.ts';
export { type BoxState, type Cipher, createAgeCipher, openState, sealState } from './sealed-file.ts';
