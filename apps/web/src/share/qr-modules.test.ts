import { expect, test } from 'vitest';
import { longestQrBytes, qrOf } from './qr-modules.ts';

// ISO/IEC 18004: version 1 is 21 squares wide, version 25 is 117; four squares of quiet on each side.
test('a QR code is drawn while it can be read', () => {
  expect(qrOf('LARKHOLD')?.size).toBe(21 + 8);
  expect(qrOf('a'.repeat(longestQrBytes))?.size).toBe(117 + 8);
  expect(qrOf('a'.repeat(longestQrBytes + 1))).toBeUndefined();
});
