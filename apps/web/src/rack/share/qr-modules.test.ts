import { builtInPrograms } from '@larkhold/engine';
import decodeQR from 'qr/decode.js';
import { expect, test } from 'vitest';
import { longestQrBytes, qrOf } from '../../shell/qr-modules.ts';
import { formatLink } from './program-link.ts';

// ISO/IEC 18004: version 1 is 21 squares wide, version 25 is 117; four squares of quiet on each side.
test('a QR code is drawn while it can be read', () => {
  expect(qrOf('LARKHOLD')?.size).toBe(21 + 8);
  expect(qrOf('a'.repeat(longestQrBytes))?.size).toBe(117 + 8);
  expect(qrOf('a'.repeat(longestQrBytes + 1))).toBeUndefined();
});

/** The drawing as a camera has it: three pixels for a square, black on white. */
function photographed({ size, path }: { size: number; path: string }) {
  const scale = 3;
  const width = size * scale;
  const data = new Uint8ClampedArray(width * width * 4).fill(255);
  for (const [, x, y] of path.matchAll(/M(\d+) (\d+)h1v1h-1z/g)) {
    for (let at = 0; at < scale * scale; at++) {
      const pixel = (Number(y) * scale + Math.floor(at / scale)) * width + Number(x) * scale + (at % scale);
      data.fill(0, pixel * 4, pixel * 4 + 3);
    }
  }
  return { width, height: width, data };
}

test('another reader finds the link in it', () => {
  const links = builtInPrograms.map((program) => formatLink('https://example.org/larkhold/', program));
  const codes = links.flatMap((link) => {
    const qr = qrOf(link);
    return qr ? [{ link, read: decodeQR(photographed(qr)) }] : [];
  });
  expect(codes.length).toBeGreaterThan(0);
  for (const { link, read } of codes) expect(read).toBe(link);
});
