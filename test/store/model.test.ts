import { rmSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Store } from '../../src/conversation/ports.js';
import { IMPERIAL, METRIC, US } from '../../src/core/show-value.js';
import { openStore } from '../../src/store/open.js';
import { folder } from './folder.js';
import { model } from './model.js';

const MEMBERS = ['ada', 'ben'];
const KEYS = ['display.length', 'room.temperature', '__proto__'];

const member = fc.constantFrom(...MEMBERS);
/** Which of the tanks made so far, whoever it belongs to. */
const tank = fc.nat(5);
const name = fc.constantFrom('Reef', 'reef', 'Nano', 'NANO', 'Lagoon', '');
const at = fc.integer({ min: 1, max: 28 }).map((day) => `2027-02-${String(day).padStart(2, '0')}T09:00:00.000Z`);
const key = fc.constantFrom(...KEYS);
const said = fc.record(
  {
    si: fc.double({ noNaN: true }).filter((number) => !Object.is(number, -0)),
    unit: fc.constantFrom('m', 'degF'),
    text: fc.string({ unit: 'grapheme' }),
  },
  { requiredKeys: [] },
);
const values = fc
  .uniqueArray(fc.tuple(key, said), { selector: ([of]) => of })
  .map((pairs) => Object.fromEntries(pairs));
const list = fc.constantFrom('purchase' as const, 'step' as const);
const content = fc.record({ item: fc.string({ unit: 'grapheme' }) }).map((entry) => JSON.stringify(entry));
const json = fc.json({ maxDepth: 1 });

const operation = fc.oneof(
  { weight: 4, arbitrary: fc.record({ do: fc.constant('createTank' as const), member, name, at }) },
  { weight: 6, arbitrary: fc.record({ do: fc.constant('saveValues' as const), member, tank, values, at }) },
  { weight: 2, arbitrary: fc.record({ do: fc.constant('removeValue' as const), member, tank, key, at }) },
  { weight: 3, arbitrary: fc.record({ do: fc.constant('addEntry' as const), member, tank, list, content, at }) },
  {
    weight: 3,
    arbitrary: fc.record({
      do: fc.constant('changeEntry' as const),
      member,
      tank,
      entry: fc.nat(5),
      content: fc.option(content, { nil: undefined }),
      at,
    }),
  },
  { weight: 2, arbitrary: fc.record({ do: fc.constant('renameTank' as const), member, tank, name }) },
  { weight: 2, arbitrary: fc.record({ do: fc.constant('useTank' as const), member, tank }) },
  fc.record({ do: fc.constant('removeTank' as const), member, tank }),
  fc.record({
    do: fc.constant('savePreferences' as const),
    member,
    preferences: fc.constantFrom(METRIC, US, IMPERIAL),
  }),
  fc.record({
    do: fc.constant('saveTimeZone' as const),
    member,
    zone: fc.constantFrom('Europe/Lisbon', 'Pacific/Auckland'),
  }),
  fc.record({ do: fc.constant('saveDialogue' as const), member, place: fc.constantFrom('direct', 'club/help'), json }),
  fc.record({ do: fc.constant('saveAnswer' as const), member, json, at }),
  fc.record({ do: fc.constant('forgetMember' as const), member }),
  fc.record({ do: fc.constant('reopen' as const) }),
);
type Operation = typeof operation extends fc.Arbitrary<infer T> ? T : never;
type Model = ReturnType<typeof model>;

/** The outcome as a text: a refusal by its code, or its message where it has none. */
async function outcome(work: () => unknown): Promise<unknown> {
  try {
    return (await work()) ?? 'done';
  } catch (error) {
    return error instanceof Error && 'code' in error ? error.code : (error as Error).message;
  }
}

/** Ids that the store gave, in the order it gave them. */
interface Made {
  readonly ids: string[];
  readonly entries: string[];
}

/** Does one operation to both and compares how it ended. */
async function both(store: Store, simple: Model, { ids, entries }: Made, step: Exclude<Operation, { do: 'reopen' }>) {
  const id = 'tank' in step ? (ids[step.tank] ?? 'none') : '';
  switch (step.do) {
    case 'createTank': {
      const made = await outcome(() => store.createTank(step.member, step.name, step.at));
      const newId = typeof made === 'object' ? (made as { id: string }).id : '';
      const expected = await outcome(() => simple.createTank(step.member, step.name, step.at, () => newId));
      expect(newId ? 'done' : made).toEqual(expected);
      if (newId) ids.push(newId);
      return;
    }
    case 'saveValues':
      expect(await outcome(() => store.saveValues(step.member, id, step.values, step.at))).toEqual(
        await outcome(() => simple.saveValues(step.member, id, step.values, step.at)),
      );
      return;
    case 'removeValue':
      expect(await outcome(() => store.removeValue(step.member, id, step.key, step.at))).toEqual(
        await outcome(() => simple.removeValue(step.member, id, step.key, step.at)),
      );
      return;
    case 'addEntry': {
      const made = await outcome(() => store.addEntries(step.member, id, step.list, [step.content], step.at));
      const entry = Array.isArray(made) ? (made[0] as string) : '';
      const expected = await outcome(() =>
        simple.addEntry(step.member, id, step.list, step.content, step.at, () => entry),
      );
      expect(entry ? 'done' : made).toEqual(expected);
      if (entry) entries.push(entry);
      return;
    }
    case 'changeEntry': {
      const entry = entries[step.entry] ?? 'none';
      const change = () =>
        step.content === undefined
          ? store.removeEntry(step.member, id, entry, step.at)
          : store.changeEntry(step.member, id, entry, step.content, step.at);
      expect(await outcome(change)).toEqual(
        await outcome(() => simple.changeEntry(step.member, id, entry, step.content, step.at)),
      );
      return;
    }
    case 'renameTank':
      expect(await outcome(() => store.renameTank(step.member, id, step.name))).toEqual(
        await outcome(() => simple.renameTank(step.member, id, step.name)),
      );
      return;
    case 'useTank':
    case 'removeTank':
      expect(await outcome(() => store[step.do](step.member, id))).toEqual(
        await outcome(() => simple[step.do](step.member, id)),
      );
      return;
    case 'savePreferences':
      await store.savePreferences(step.member, step.preferences);
      simple.savePreferences(step.member, step.preferences);
      return;
    case 'saveTimeZone':
      await store.saveTimeZone(step.member, step.zone);
      simple.saveTimeZone(step.member, step.zone);
      return;
    case 'saveDialogue':
      await store.saveDialogue(step.member, step.place, step.json);
      simple.saveDialogue(step.member, step.place, step.json);
      return;
    case 'saveAnswer': {
      const answer = { member: step.member, calculation: 'heater.size', given: step.json, at: step.at };
      const answerId = await store.saveAnswer(answer);
      simple.saveAnswer(step.member, answerId, step.json, step.at);
      expect(await store.answer(answerId)).toEqual({ id: answerId, ...answer });
      return;
    }
    case 'forgetMember':
      expect(await store.forgetMember(step.member)).toBe(simple.forgetMember(step.member));
  }
}

async function same(store: Store, simple: Model): Promise<void> {
  for (const one of MEMBERS) {
    expect(await store.tanks(one)).toEqual(simple.tanks(one));
    for (const { id } of simple.tanks(one))
      for (const kind of ['purchase', 'step'] as const)
        expect(await store.entries(one, id, kind)).toEqual(simple.entries(one, id, kind));
    const exported = await store.exportMember(one);
    expect(exported).toEqual(simple.exportMember(one));
    expect(await store.preferences(one)).toEqual(exported.preferences ?? undefined);
    expect(await store.timeZone(one)).toEqual(exported.time_zone ?? undefined);
  }
}

test('any sequence of operations leaves what a simple model says', async () => {
  const place = folder();
  let run = 0;
  await fc.assert(
    fc.asyncProperty(fc.array(operation, { maxLength: 40 }), async (operations) => {
      const path = join(place, `${run++}.db`);
      const simple = model();
      const made: Made = { ids: [], entries: [] };
      let store = await openStore(path);
      try {
        for (const step of operations) {
          if (step.do === 'reopen') {
            await store.close();
            store = await openStore(path);
          } else {
            await both(store, simple, made, step);
          }
        }
        await same(store, simple);
      } finally {
        await store.close();
        rmSync(path);
      }
    }),
    { numRuns: 100 },
  );
}, 60_000);
