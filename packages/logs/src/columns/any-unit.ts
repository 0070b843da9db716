import { channelNames, channelOf } from '../channels/channels.js';
import { unitOfText } from './unit-text.js';

const memo = new Map<string, boolean>();

/** Whether a text is a unit of any channel: tells a row of units from a row of values. */
export function anyUnit(text: string): boolean {
  const given = text.trim().replace(/^[[({<]\s*(.*?)\s*[\])}>]$/, '$1');
  if (given === '' || given.length > 20) return false;
  const known = memo.get(given);
  if (known !== undefined) return known;
  if (memo.size > 5000) memo.clear();
  const answer = channelNames.some((name) => unitOfText(channelOf(name), given) !== undefined);
  memo.set(given, answer);
  return answer;
}
