import { randomUUID } from 'node:crypto';
import type { Store } from '../conversation/ports.js';
import { introduceMember, type Queries } from './tables.js';

/** Buttons under older answers of a member find nothing any more; nothing else reads old answers. */
export const ANSWERS_KEPT = 200;

type AnswerMethods = Pick<Store, 'dialogue' | 'saveDialogue' | 'saveAnswer' | 'answer'>;

export function answerMethods(db: Queries): AnswerMethods {
  return {
    async dialogue(member, place) {
      const row = await db
        .selectFrom('dialogue')
        .select('state')
        .where('member_id', '=', member)
        .where('place', '=', place)
        .executeTakeFirst();
      return row?.state;
    },

    saveDialogue(member, place, state) {
      return db.transaction().execute(async (transaction) => {
        await introduceMember(transaction, member);
        await transaction
          .insertInto('dialogue')
          .values({ member_id: member, place, state })
          .onConflict((known) => known.columns(['member_id', 'place']).doUpdateSet({ state }))
          .execute();
      });
    },

    saveAnswer({ member, calculation, given, at }) {
      return db.transaction().execute(async (transaction) => {
        await introduceMember(transaction, member);
        const last = await transaction
          .selectFrom('answer')
          .select(({ fn }) => fn.max('number').as('number'))
          .where('member_id', '=', member)
          .executeTakeFirst();
        const number = (last?.number ?? 0) + 1;
        const id = randomUUID();
        await transaction
          .insertInto('answer')
          .values({ id, member_id: member, number, calculation, given, at })
          .execute();
        await transaction
          .deleteFrom('answer')
          .where('member_id', '=', member)
          .where('number', '<=', number - ANSWERS_KEPT)
          .execute();
        return id;
      });
    },

    async answer(id) {
      const row = await db.selectFrom('answer').selectAll().where('id', '=', id).executeTakeFirst();
      return row && { id, member: row.member_id, calculation: row.calculation, given: row.given, at: row.at };
    },
  };
}
