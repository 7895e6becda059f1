import { dayNumberOf } from '../units/calendar-day.ts';
import { instantMs } from '../units/instant.ts';
import { copyReps } from './copy-reps.ts';
import type { DrillRecord } from './drill-record.ts';
import { DEVICE_MARK } from './edit-order.ts';

const FIRST_SURROGATE = 0xd800;
const DEVICE = /^[a-z0-9]{1,16}$/;
/** Keys that every record has. */
const NEEDED = 6;

/** Whether a value is one of a key that a record may have. What is seldom there is left to the schema: stamps of groups, marks of removal. */
const optional: { readonly [Key in keyof DrillRecord]?: (value: unknown) => boolean } = {
  programId: (value) => isText(value, 64),
  effort: (value) => isNumber(value, 10),
  pain: (value) => typeof value === 'boolean',
  kind: (value) => value === 'test',
  note: (value) => isText(value, 4000),
  prescribedReps: isCount,
  durationMs: isCount,
  onFingersLbf: (value) => isNumber(value, 200),
  tool: (value) => value === 'bow' || value === 'light-bow' || value === 'band' || value === 'strap',
  open: (value) => value === true,
  editedAt: isStamp,
};
const optionalKeys = Object.keys(optional);
const checks = optionalKeys.map((key) => optional[key as keyof DrillRecord]!);

/**
 * Copies a drill record if it is one that `drillRecordSchema` takes, many times as quickly as the schema does it: ten years of records are read
 * before the app can show anything.
 * @param found what came from outside.
 * @returns the copy; undefined where anything is not right, or where only the schema can tell.
 */
export function copyDrill(found: unknown): DrillRecord | undefined {
  if (typeof found !== 'object' || found === null) return undefined;
  const row = found as Readonly<Record<string, unknown>>;
  const { id, program, date, startedAt, endedAt } = row;
  if (!isId(id) || !isText(program, 120) || program === '' || !isDay(date)) return undefined;
  if (!isInstant(startedAt) || !isInstant(endedAt)) return undefined;
  const reps = copyReps(row.reps);
  if (!reps) return undefined;
  const copy: DrillRecord = { id, program, date, startedAt, endedAt, reps };
  let keyCount = NEEDED;
  for (let at = 0; at < optionalKeys.length; at++) {
    const key = optionalKeys[at]!;
    const value = row[key];
    if (value === undefined) continue;
    if (!checks[at]!(value)) return undefined;
    (copy as Record<string, unknown>)[key] = value;
    keyCount += 1;
  }
  return countKeys(row) === keyCount ? copy : undefined;
}

/** As each key that was read has a value, as many keys mean that none is a strange one. */
function countKeys(found: object): number {
  let count = 0;
  for (const _key in found) count += 1;
  return count;
}

/** Of whole characters; half of a pair of surrogates, and all others beyond the first plane, are left to the schema. */
function isId(value: unknown): value is string {
  if (typeof value !== 'string' || value.length < 1 || value.length > 64) return false;
  for (let at = 0; at < value.length; at++) if (value.charCodeAt(at) >= FIRST_SURROGATE) return false;
  return true;
}

function isText(value: unknown, most: number): value is string {
  return typeof value === 'string' && value.length <= most;
}

function isNumber(value: unknown, most: number): value is number {
  return typeof value === 'number' && value >= 0 && value <= most;
}

function isCount(value: unknown): value is number {
  return Number.isSafeInteger(value) && Number(value) >= 0;
}

function isDay(value: unknown): value is string {
  return dayNumberOf(value) !== undefined && isOfYears(String(value));
}

function isInstant(value: unknown): value is string {
  return typeof value === 'string' && value.length <= 40 && Number.isFinite(instantMs(value)) && isOfYears(value);
}

/** Beyond these years only a stamp may lie: that is left to the schema. */
function isOfYears(text: string): boolean {
  return '1900' <= text && text < '3000';
}

function isStamp(value: unknown): boolean {
  if (typeof value !== 'string') return false;
  const end = value.indexOf(DEVICE_MARK);
  return end < 0 ? isInstant(value) : isInstant(value.slice(0, end)) && DEVICE.test(value.slice(end + 1));
}
