import { holdsPhrase, isLittle, type Words } from './cues.js';

const ORDINALS: readonly RegExp[] = [
  /^(?:the )?(?:first|1st|1|former|a)\b/,
  /^(?:the )?(?:second|2nd|2|latter|b)\b/,
  /^(?:the )?(?:third|3rd|3|c)\b/,
];

/** Which of some choices a short answer means: by its place, or by words that only one of them has. */
export function placeNamed(
  choices: readonly (readonly string[])[],
  { text, words }: { readonly text: string; readonly words: Words },
): number | undefined {
  const place = ORDINALS.findIndex((pattern) => pattern.test(text.trim()));
  if (place >= 0) return place < choices.length ? place : undefined;
  const telling = choices.map((own) => new Set(own.filter((word) => !isLittle(word))));
  const hits = telling.map(
    (own, i) =>
      [...own].filter((word) => holdsPhrase(words, word) && !telling.some((other, k) => k !== i && other.has(word)))
        .length,
  );
  const most = Math.max(...hits);
  return most > 0 && hits.filter((count) => count === most).length === 1 ? hits.indexOf(most) : undefined;
}
