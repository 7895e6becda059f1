import { expect, it } from 'vitest';
import { type BoxAdapter, LARGEST_FILE_BYTES } from '../box-adapter.ts';
import { boxFileName } from '../box-file-name.ts';

const bytes = (...values: number[]): Uint8Array<ArrayBuffer> => new Uint8Array(values);
const PHONE = `phone-1-${'a'.repeat(26)}.age`;

/**
 * What every box must do, wherever it lies. Run on each adapter, in Node and in a browser.
 * @param open opens a fresh, empty box.
 */
export function describeBox(open: () => Promise<BoxAdapter>): void {
  it('is empty before anything is put, and a file that is not there is missing', async () => {
    const box = await open();
    expect(await box.list()).toEqual({ ok: true, value: [] });
    expect(await box.get(PHONE)).toMatchObject({ ok: false, trouble: { kind: 'missing' } });
    expect(await box.remove(PHONE)).toEqual({ ok: true, value: undefined });
  });

  it('gives back byte for byte what was put, and lists it with the mark that a get and the put tell', async () => {
    const box = await open();
    const all = new Uint8Array(Array.from({ length: 70_000 }, (_, index) => (index * 7) % 256));
    const put = await box.put(PHONE, all);
    const got = await box.get(PHONE);
    if (!got.ok || !put.ok) throw new Error('nothing was put');
    expect(got.value.content.every((byte, index) => byte === all[index])).toBe(true);
    expect(got.value.content.length).toBe(70_000);
    expect(got.value.mark).toBe(put.value);
    expect(await box.list()).toEqual({ ok: true, value: [{ name: PHONE, bytes: 70_000, mark: put.value }] });
  });

  it('takes the same file again, whole', async () => {
    const box = await open();
    expect((await box.put(PHONE, bytes(1, 2, 3, 4))).ok).toBe(true);
    expect((await box.put(PHONE, bytes(1, 2, 3, 4))).ok).toBe(true);
    expect(await box.get(PHONE)).toMatchObject({ ok: true, value: { content: bytes(1, 2, 3, 4) } });
  });

  it('keeps both where two put at one moment under one device’s name: a name is written once, so nothing is lost', async () => {
    const box = await open();
    const [one, other] = [bytes(1, 1, 1), bytes(2, 2, 2)];
    const names = await Promise.all([boxFileName('phone', 7, one), boxFileName('phone', 7, other)]);
    await Promise.all([box.put(names[0], one), box.put(names[1], other)]);
    expect(await box.get(names[0])).toMatchObject({ ok: true, value: { content: one } });
    expect(await box.get(names[1])).toMatchObject({ ok: true, value: { content: other } });
  });

  it('holds several files, and removes one of them', async () => {
    const box = await open();
    const names = ['phone-1', 'phone-2', 'tablet-1'].map((start) => `${start}-${'b'.repeat(26)}.age`);
    for (const name of names) await box.put(name, bytes(1));
    await box.remove(names[0]!);
    const listed = await box.list();
    expect(listed.ok && listed.value.map(({ name }) => name).sort()).toEqual(names.slice(1));
  });

  it('takes a file of a size that no journal has only if it gives it back as enormous, or refuses it', async () => {
    const box = await open();
    const put = await box.put(PHONE, new Uint8Array(LARGEST_FILE_BYTES + 1));
    if (put.ok) expect(await box.list()).toMatchObject({ ok: true, value: [{ bytes: LARGEST_FILE_BYTES + 1 }] });
    else expect(put.trouble.kind).toBe('enormous');
  });
}
