import { namedIn, refused, type Judged } from './judgement';
import type { ChoiceItem, SeveralItem } from './item';

/** One of several: all or nothing, with the reason of the one that was chosen. */
export function judgeChoice(
  options: ChoiceItem['options'],
  key: string,
  chosenId: string | null,
): Judged {
  if (chosenId === null) return refused('no-answer');
  const chosen = options.find(({ id }) => id === chosenId);
  const right = options.find(({ id }) => id === key);
  if (chosen === undefined || right === undefined) return refused('other-question');
  const said = [chosen.reason];
  const mark = chosen === right ? 1 : 0;
  return {
    ok: true,
    judgement: {
      mark,
      said,
      misconceptions: chosen === right ? [] : namedIn([chosen]),
      right: sentence(right.text),
    },
  };
}

/** Right ones ticked less wrong ones ticked, as a share of the right ones; ticking all is worth nothing more. */
export function judgeSeveral(options: SeveralItem['options'], ticked: readonly string[]): Judged {
  if (ticked.length === 0) return refused('no-answer');
  if (ticked.some((id) => options.every((one) => one.id !== id))) return refused('other-question');
  const isTicked = ({ id }: { id: string }) => ticked.includes(id);
  const right = options.filter((one) => one.right);
  const found = right.filter(isTicked);
  const missed = right.filter((one) => !isTicked(one));
  const mistaken = options.filter((one) => !one.right && isTicked(one));
  const mark = Math.max(0, (found.length - mistaken.length) / right.length);
  const said = [
    ...mistaken.map(({ text, reason }) => `Not “${bare(text)}”: ${reason}`),
    ...missed.map(({ text, reason }) => `Also “${bare(text)}”: ${reason}`),
    ...(mark === 1 ? found.map(({ reason }) => reason) : []),
  ];
  return {
    ok: true,
    judgement: {
      mark,
      said,
      misconceptions: namedIn(mistaken),
      right: sentence(right.map(({ text }) => bare(text)).join('; ')),
    },
  };
}

const bare = (text: string): string => text.replace(/[.]$/, '');
const sentence = (text: string): string => (/[.!?]$/.test(text) ? text : `${text}.`);
