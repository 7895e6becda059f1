import { expect, it } from 'vitest';
import { type BoxAdapter, LARGEST_FILE_BYTES } from '../box-adapter.ts';

const bytes = (...values: number[]): Uint8Array<ArrayBuffer> => new Uint8Array(values);

/**
 * What every box must do, wherever it lies. Run on each adapter.
 * @param open opens a fresh, empty box.
 */
export function describeBox(open: () => Promise<BoxAdapter>): void {
  it('is empty before anything is put, and a file that is not there is missing', async () => {
    const box = await open();
    expect(await box.list()).toEqual({ ok: true, value: [] });
    expect(await box.get('phone.age')).toMatchObject({ ok: false, trouble: { kind: 'missing' } });
    expect(await box.remove('phone.age')).toEqual({ ok: true, value: undefined });
  });

  it('gives back byte for byte what was put, and lists it with the mark that a get and the put tell', async () => {
    const box = await open();
    const all = new Uint8Array(Array.from({ length: 70_000 }, (_, index) => (index * 7) % 256));
    const put = await box.put('phone.age', all);
    const got = await box.get('phone.age');
    expect(got).toMatchObject({ ok: true });
    if (!got.ok || !put.ok) return;
    expect(Buffer.from(got.value.content).equals(Buffer.from(all))).toBe(true);
    expect(got.value.mark).toBe(put.value);
    expect(await box.list()).toEqual({ ok: true, value: [{ name: 'phone.age', bytes: 70_000, mark: put.value }] });
  });

  it('replaces a file whole, with another mark', async () => {
    const box = await open();
    const first = await box.put('phone.age', bytes(1, 2, 3, 4));
    const second = await box.put('phone.age', bytes(9));
    expect(first.ok && second.ok && first.value !== second.value).toBe(true);
    expect(await box.get('phone.age')).toMatchObject({ ok: true, value: { content: bytes(9) } });
  });

  it('puts only where the precondition holds', async () => {
    const box = await open();
    const changed = { ok: false, trouble: { kind: 'changed' } };
    expect(await box.put('phone.age', bytes(1), { is: 'unchanged', mark: 'x' })).toMatchObject(changed);
    const first = await box.put('phone.age', bytes(1), { is: 'absent' });
    expect(await box.put('phone.age', bytes(2), { is: 'absent' })).toMatchObject(changed);
    const mark = first.ok ? first.value : '';
    const second = await box.put('phone.age', bytes(3, 3), { is: 'unchanged', mark });
    expect(second.ok).toBe(true);
    expect(await box.put('phone.age', bytes(4, 4, 4), { is: 'unchanged', mark })).toMatchObject(changed);
    expect(await box.get('phone.age')).toMatchObject({ ok: true, value: { content: bytes(3, 3) } });
  });

  it('holds several files, and removes one of them', async () => {
    const box = await open();
    for (const name of ['phone.age', 'phone.prev.age', 'tablet.age']) await box.put(name, bytes(1));
    await box.remove('phone.age');
    const listed = await box.list();
    expect(listed.ok && listed.value.map(({ name }) => name).sort()).toEqual(['phone.prev.age', 'tablet.age']);
  });

  it('takes a file of a size that no journal has only if it gives it back as enormous, or refuses it', async () => {
    const box = await open();
    const put = await box.put('phone.age', new Uint8Array(LARGEST_FILE_BYTES + 1));
    if (!put.ok) expect(put.trouble.kind).toBe('enormous');
    else if ((await box.list()).ok) expect((await box.get('phone.age')).ok).toBeDefined();
  });
}
