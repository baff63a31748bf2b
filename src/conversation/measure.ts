import { answerIn } from '../core/answer.js';
import { forReading, withFigures } from '../core/quantity/number.js';
import { displayUnit, fromSI, systemOf, toSI, type UnitRow, unitNamed } from '../core/quantity/units.js';
import type { Reply } from '../core/reply.js';
import { run } from '../core/run.js';
import type { Mention } from '../language/measurements.js';
import { calculationNamed } from './catalogue.js';
import { makeReply, notice } from './replies.js';
import { preferencesFor, type Turn } from './turn.js';
import { type Heard, hearText } from './understand.js';

const FIGURES = 4;
const written = (value: number, unit: UnitRow): string =>
  `${forReading(withFigures(value, FIGURES))} ${unit.shown}`.trim();

/** The same value in the other system: inches for centimetres, Celsius for Fahrenheit. */
function otherUnits(mention: Mention): string[] {
  return mention.units
    .filter(({ quantities }) => !quantities.includes('temperature difference'))
    .slice(0, 2)
    .flatMap((unit) => {
      const [quantity] = unit.quantities;
      const system = systemOf(unit);
      if (!quantity || !system) return [];
      const others: UnitRow[] =
        quantity === 'temperature'
          ? [unitNamed(unit.id === 'degF' ? 'degC' : 'degF')]
          : system === 'metric'
            ? [displayUnit(quantity, 'us')]
            : [displayUnit(quantity, 'metric')];
      const si = toSI(mention.value, unit);
      return others
        .filter((other) => other.id !== unit.id)
        .map((other) => `${written(mention.value, unit)} = ${written(fromSI(si, other), other)}`);
    });
}

/** Works out the measurements of somebody's message for one reader: conversions, and the volume of sizes. */
export function measure(turn: Turn, text: string): Reply {
  const heard = hearText(text);
  const lines = [...new Set(heard.mentions.flatMap(otherUnits))];
  const volume = volumeOf(turn, heard);
  if (lines.length === 0 && !volume)
    return notice(turn.speaker, 'I see no measurement with a unit in that message.', { private: true });
  return makeReply(turn.speaker, 'notice', volume ?? lines[0]!, {
    body: (volume ? lines : lines.slice(1)).join('\n'),
    private: true,
  });
}

function volumeOf(turn: Turn, { mentions, said }: Heard): string | undefined {
  const group = mentions.filter((mention) => mention.group?.size === 3).slice(0, 3);
  const calculation = calculationNamed('volume.rectangular');
  if (group.length < 3 || !calculation) return undefined;
  const given = Object.fromEntries(
    group.flatMap((mention, i) => {
      const unit = mention.units.find(({ quantities }) => quantities.includes('length'));
      return unit
        ? [
            [
              ['length', 'width', 'height'][i]!,
              { si: toSI(mention.value, unit), unit: unit.id, from: 'message' as const },
            ],
          ]
        : [];
    }),
  );
  const outcome = run(calculation, given);
  if (outcome.kind !== 'answer') return undefined;
  const worded = answerIn(outcome, preferencesFor(turn, said));
  const box = worded.results.find(({ id }) => id === 'volume_outside');
  return (
    box &&
    `${group.map(({ value }) => value).join(' x ')} ${group[2]!.units[0]?.shown ?? ''}, measured outside, is a box of ${box.shown}.`
  );
}
