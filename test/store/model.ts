import type { StoredValue, Tank } from '../../src/conversation/ports.js';
import type { Preferences } from '../../src/core/show-value.js';
import { ANSWERS_KEPT } from '../../src/store/answers.js';

interface Version {
  readonly key: string;
  readonly value: StoredValue;
  readonly said_at: string;
  replaced_at: string | null;
}

interface ModelTank {
  readonly id: string;
  name: string;
  current: boolean;
  readonly created_at: string;
  readonly versions: Version[];
  readonly entries: ModelEntry[];
}

interface ModelEntry {
  readonly id: string;
  readonly list: string;
  readonly versions: { readonly content: string; readonly said_at: string; replaced_at: string | null }[];
}

interface ModelMember {
  known: boolean;
  preferences: Preferences | null;
  time_zone: string | null;
  tanks: ModelTank[];
  readonly dialogues: Map<string, string>;
  answers: { id: string; calculation: string; given: string; at: string }[];
}

const nobody = (): ModelMember => ({
  known: false,
  preferences: null,
  time_zone: null,
  tanks: [],
  dialogues: new Map(),
  answers: [],
});
const byText = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0);

/** What a store should do, in plain objects; ids come from the store under test. */
export function model() {
  const members = new Map<string, ModelMember>();
  const of = (member: string) => members.get(member) ?? nobody();
  const known = (member: string) => {
    const found = of(member);
    found.known = true;
    members.set(member, found);
    return found;
  };
  const own = (member: string, id: string) => {
    const tank = of(member).tanks.find((candidate) => candidate.id === id);
    if (!tank) throw new Error('no such tank');
    return tank;
  };
  const free = (member: string, name: string, except?: ModelTank) => {
    const taken = of(member).tanks.some((tank) => tank !== except && tank.name.toLowerCase() === name.toLowerCase());
    if (taken) throw new Error('name-taken');
  };
  const inOrder = (member: string) =>
    [...of(member).tanks].sort(
      (a, b) => byText(a.created_at, b.created_at) || byText(a.name.toLowerCase(), b.name.toLowerCase()),
    );
  const end = (tank: ModelTank, key: string, at: string) => {
    for (const version of tank.versions) {
      if (version.key === key && version.replaced_at === null) version.replaced_at = at;
    }
  };
  const history = (tank: ModelTank) =>
    Object.fromEntries(
      [...new Set(tank.versions.map(({ key }) => key))].map((key) => [
        key,
        tank.versions
          .filter((version) => version.key === key)
          .map(({ value, said_at, replaced_at }) => ({ ...value, said_at, replaced_at })),
      ]),
    );

  const lists = (tank: ModelTank) =>
    Object.fromEntries(
      [...new Set(tank.entries.map(({ list }) => list))].map((list) => [
        list,
        tank.entries
          .filter((entry) => entry.list === list)
          .flatMap(({ id, versions }) =>
            versions.map(({ content, ...times }) => ({ id, ...JSON.parse(content), ...times })),
          ),
      ]),
    );

  return {
    savePreferences(member: string, preferences: Preferences) {
      known(member).preferences = preferences;
    },
    saveTimeZone(member: string, zone: string) {
      known(member).time_zone = zone;
    },
    createTank(member: string, name: string, created_at: string, id: () => string) {
      free(member, name);
      const found = known(member);
      for (const tank of found.tanks) tank.current = false;
      found.tanks.push({ id: id(), name, current: true, created_at, versions: [], entries: [] });
    },
    useTank(member: string, id: string) {
      const chosen = own(member, id);
      for (const tank of of(member).tanks) tank.current = tank === chosen;
    },
    renameTank(member: string, id: string, name: string) {
      const tank = own(member, id);
      free(member, name, tank);
      tank.name = name;
    },
    removeTank(member: string, id: string) {
      const gone = own(member, id);
      of(member).tanks = of(member).tanks.filter((tank) => tank !== gone);
    },
    saveValues(member: string, id: string, values: Readonly<Record<string, StoredValue>>, at: string) {
      const tank = own(member, id);
      for (const [key, value] of Object.entries(values)) {
        end(tank, key, at);
        tank.versions.push({ key, value, said_at: at, replaced_at: null });
      }
    },
    removeValue(member: string, id: string, key: string, at: string) {
      end(own(member, id), key, at);
    },
    addEntry(member: string, id: string, list: string, content: string, said_at: string, entry: () => string) {
      const tank = own(member, id);
      tank.entries.push({ id: entry(), list, versions: [{ content, said_at, replaced_at: null }] });
    },
    changeEntry(member: string, id: string, entry: string, content: string | undefined, at: string) {
      const found = own(member, id).entries.find((candidate) => candidate.id === entry);
      const newest = found?.versions.at(-1);
      if (!found || newest?.replaced_at !== null) throw new Error('no such entry');
      newest.replaced_at = at;
      if (content !== undefined) found.versions.push({ content, said_at: at, replaced_at: null });
    },
    entries: (member: string, id: string, list: string) =>
      own(member, id)
        .entries.filter((entry) => entry.list === list && entry.versions.at(-1)!.replaced_at === null)
        .map(({ id: entry, versions }) => ({ id: entry, content: versions.at(-1)!.content })),
    saveDialogue(member: string, place: string, state: string) {
      known(member).dialogues.set(place, state);
    },
    saveAnswer(member: string, id: string, given: string, at: string) {
      const found = known(member);
      found.answers = [...found.answers, { id, calculation: 'heater.size', given, at }].slice(-ANSWERS_KEPT);
    },
    forgetMember(member: string): number {
      const { known: met, tanks, dialogues, answers } = of(member);
      const rows = (tank: ModelTank) =>
        tank.versions.length + tank.entries.reduce((count, entry) => count + entry.versions.length, 0);
      const values = tanks.reduce((count, tank) => count + rows(tank), 0);
      members.delete(member);
      return Number(met) + tanks.length + values + dialogues.size + answers.length;
    },
    tanks: (member: string): Tank[] =>
      inOrder(member).map(({ id, name, current, versions }) => ({
        id,
        member,
        name,
        current,
        values: Object.fromEntries(
          versions.filter(({ replaced_at }) => replaced_at === null).map(({ key, value }) => [key, value]),
        ),
      })),
    exportMember: (member: string) => ({
      member,
      preferences: of(member).preferences,
      time_zone: of(member).time_zone,
      tanks: inOrder(member).map((tank) => ({
        id: tank.id,
        name: tank.name,
        current: tank.current,
        created_at: tank.created_at,
        values: history(tank),
        lists: lists(tank),
      })),
      dialogues: [...of(member).dialogues]
        .sort(([a], [b]) => byText(a, b))
        .map(([place, state]) => ({ place, state: JSON.parse(state) })),
      answers: of(member).answers.map((answer) => ({ ...answer, given: JSON.parse(answer.given) })),
    }),
  };
}
