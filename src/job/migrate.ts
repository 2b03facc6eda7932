import { isRecord, isText } from './json.ts';
import type { ByName } from './record.ts';

/** Version of the record as it is written now. */
export const SCHEMA = 2;

type Data = ByName<unknown>;

/** What makes a record of version `i` one of version `i + 1`. What they do not know they leave alone. */
const MIGRATIONS: Readonly<Record<number, (data: Data) => Data>> = { 1: signTicks };

/** A record of an older version as one of the version that is written now. */
export function migrate(data: Data, from: number): Data {
  let migrated = data;
  for (let version = from; version < SCHEMA; version += 1) {
    migrated = { ...MIGRATIONS[version]!(migrated), schema: version + 1 };
  }
  return migrated;
}

/** In version 1 a tick was the day alone. */
function signTicks(data: Data): Data {
  const { ticks } = data;
  return isRecord(ticks) ? { ...data, ticks: mapLeaves(ticks, signTick) } : data;
}

function signTick(tick: unknown): unknown {
  return isText(tick) ? { on: tick } : tick;
}

function mapLeaves(outer: Data, change: (leaf: unknown) => unknown): Data {
  return mapValues(outer, (inner) => (isRecord(inner) ? mapValues(inner, change) : inner));
}

function mapValues(record: Data, change: (value: unknown) => unknown): Data {
  return Object.fromEntries(Object.entries(record).map(([name, value]) => [name, change(value)]));
}
