import {
  addStep,
  type BuildPlan,
  finishStep,
  moveStep,
  noPlan,
  page,
  planOf,
  reopenStep,
  skipStep,
  startBuild,
  stepNamed,
  stepPage,
} from '../src/conversation/build-plan.js';
import type { Command, CommandAction, CommandOption } from '../src/conversation/command.js';
import { dayNamed } from '../src/conversation/days.js';
import { bought, buy, drop, PURCHASE_PARTS, purchaseIn, shopping } from '../src/conversation/purchases.js';
import { refusal } from '../src/conversation/replies.js';
import { currentTank, type Turn } from '../src/conversation/turn.js';
import type { Reply } from '../src/core/reply.js';
import type { Which } from '../src/language/dates.js';

const step: CommandOption = { name: 'step', description: 'which step, such as leak test', suggest: 'step' };
const date: CommandOption = { name: 'date', description: 'such as today, saturday or 2027-03-14' };
const item: CommandOption = { name: 'item', description: 'what is on the list', required: true };

type Paid = Parameters<typeof bought>[3];

const pricesOf = (said: ReturnType<typeof purchaseIn>): Paid => ({
  ...(said?.price === undefined ? {} : { price: said.price }),
  ...(said?.total === undefined ? {} : { total: said.total }),
});

type OnStep = (
  turn: Turn,
  plan: BuildPlan,
  step: NonNullable<ReturnType<typeof stepNamed>>,
  date: string,
) => Promise<Reply> | Reply;

/** Runs something on a step of the member's build, which a text names. */
const onStep =
  (run: OnStep, which: Which = 'last'): CommandAction['run'] =>
  async (turn, { step: text = '', date: day = 'today' }) => {
    const plan = await planOf(turn);
    if (!plan) return [noPlan(turn)];
    const found = stepNamed(text, plan.build.steps);
    if (!found)
      return [refusal(turn.speaker, `The build has no step “${text}”: “/plan steps” lists them. Nothing was changed.`)];
    const on = await dayNamed(turn, day, which);
    if (!on)
      return [
        refusal(
          turn.speaker,
          `“${day}” is no day I can read: write today, saturday or 2027-03-14. Nothing was changed.`,
        ),
      ];
    return [await run(turn, plan, found, on)];
  };

export const planCommand: Command = {
  name: 'plan',
  description: 'The build as a whole: its steps on dates, its shopping list, its budget',
  calculations: ['cost.budget'],
  actions: [
    {
      name: 'start',
      description: 'lay the build out as dated steps, or move its start',
      options: [
        date,
        { name: 'rock', description: 'the cycle is shorter with live or seeded rock', choices: ['dry', 'live'] },
      ],
      private: true,
      run: async (turn, { date: text = 'today', rock = 'dry' }) => {
        const start = await dayNamed(turn, text, 'next');
        return [
          start
            ? await startBuild(turn, start, /live|seed/.test(rock))
            : refusal(turn.speaker, `“${text}” is no day I can read: write today, saturday or 2027-03-14.`),
        ];
      },
    },
    {
      name: 'steps',
      description: 'the steps with their dates; or one of them, what it waits for and what may go on beside it',
      options: [step],
      private: true,
      run: async (turn, { step: text }) => {
        if (text) return onStep(stepPage)(turn, { step: text });
        const plan = await planOf(turn);
        return [plan ? page(turn, plan) : noPlan(turn)];
      },
    },
    {
      name: 'done',
      description: 'tick a step off',
      options: [{ ...step, required: true }, date],
      private: true,
      run: onStep(finishStep),
    },
    {
      name: 'reopen',
      description: 'a step is not done after all, or is wanted again',
      options: [{ ...step, required: true }],
      private: true,
      run: onStep(reopenStep),
    },
    {
      name: 'move',
      description: 'put a step on a later day; the rest follows',
      options: [
        { ...step, required: true },
        { ...date, required: true },
      ],
      private: true,
      run: onStep(moveStep, 'next'),
    },
    {
      name: 'skip',
      description: 'leave a step out, such as drilling',
      options: [{ ...step, required: true }],
      private: true,
      run: onStep(skipStep),
    },
    {
      name: 'add-step',
      description: 'add a step of your own',
      options: [
        { name: 'name', description: 'what is to be done', required: true },
        { name: 'days', description: 'how many days it takes' },
        { name: 'after', description: 'the step that must be over first', suggest: 'step' },
        { name: 'before', description: 'the step that waits for it', suggest: 'step' },
      ],
      private: true,
      run: async (turn, { name = '', days = '1', after = '', before = '' }) => {
        const plan = await planOf(turn);
        if (!plan) return [noPlan(turn)];
        const named = (text: string) => (text === '' ? [] : [stepNamed(text, plan.build.steps)]);
        const [first, then] = [named(after), named(before)];
        if ([...first, ...then].includes(undefined))
          return [refusal(turn.speaker, 'That is no step of this build: “/plan steps” lists them. Nothing was added.')];
        const length = Number(days.replace(/[^\d.]/g, ''));
        if (!Number.isInteger(length) || length < 1 || length > 365)
          return [refusal(turn.speaker, 'A step takes 1 to 365 whole days: nothing was added.')];
        const known = (steps: typeof first) => steps.filter((entry) => entry !== undefined);
        return [
          await addStep(turn, plan, { name: name.trim(), days: length, after: known(first), before: known(then) }),
        ];
      },
    },
    {
      name: 'shopping',
      description: 'the shopping list with its totals by part of the build',
      options: [],
      private: true,
      run: async (turn) => [await shopping(turn, currentTank(turn))],
    },
    {
      name: 'buy',
      description: 'put something on the shopping list',
      options: [
        { name: 'item', description: 'such as 2 heaters at 45 each', required: true },
        { name: 'price', description: 'for one of it, in your own money' },
        { name: 'quantity', description: 'how many' },
        { name: 'part', description: 'the part of the build it belongs to', choices: PURCHASE_PARTS },
      ],
      private: true,
      run: async (turn, { item: text = '', price, quantity, part }) => {
        const said = purchaseIn(text);
        if (!said) return [refusal(turn.speaker, 'Say what to buy: /plan buy item:2 heaters at 45 each.')];
        const number = (typed: string) => Number(typed.replace(/[^\d.-]/g, '') || Number.NaN);
        return [
          await buy(
            turn,
            {
              ...said,
              ...(price === undefined ? {} : { price: number(price) }),
              ...(quantity === undefined ? {} : { quantity: number(quantity) }),
            },
            PURCHASE_PARTS.find((name) => name === part?.toLowerCase()),
          ),
        ];
      },
    },
    {
      name: 'bought',
      description: 'mark an item of the list as bought',
      options: [item, { name: 'price', description: 'what one of it cost' }, date],
      private: true,
      run: async (turn, { item: text = '', price, date: day = 'today' }) => {
        const said = purchaseIn(text);
        const several = said?.counted ? { quantity: said.quantity } : {};
        const paid: Paid =
          price === undefined
            ? { ...several, ...pricesOf(said) }
            : { ...several, price: Number(price.replace(/[^\d.]/g, '') || Number.NaN) };
        const on = await dayNamed(turn, day, 'last');
        if (!on || Number.isNaN(paid.price))
          return [
            refusal(
              turn.speaker,
              'Write the price as a number and the day as today or 2027-03-14. Nothing was changed.',
            ),
          ];
        return [await bought(turn, said?.item ?? text, on, paid)];
      },
    },
    {
      name: 'drop',
      description: 'take an item off the list',
      options: [item],
      private: true,
      run: async (turn, { item: text = '' }) => [await drop(turn, text)],
    },
  ],
};
