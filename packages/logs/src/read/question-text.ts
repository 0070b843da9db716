import { unitSymbol } from '@wallflow/units';
import { channelOf } from '../channels/channels.js';
import type { Choice, Question } from './question.js';

function unitText({ channel, unit }: Choice): string {
  const entry = channelOf(channel);
  const sign = unit === undefined ? '' : unitSymbol(entry.kind, unit);
  return entry.perStroke === true && sign !== '' ? `${sign} per stroke` : sign;
}

function choiceText(choice: Choice): string {
  const unit = unitText(choice);
  return unit === '' ? channelOf(choice.channel).label : `${channelOf(choice.channel).label} in ${unit}`;
}

const quoted = (text: string) => `“${text.slice(0, 80)}”`;

/** A question in words. */
export function questionText(question: Question): string {
  switch (question.ask) {
    case 'channel':
      return `What is ${quoted(question.column)}? It could be ${question.choices.map(choiceText).join('; ')}.`;
    case 'unit': {
      const given = question.given === undefined ? '' : ` ${quoted(question.given)} is not a unit of it.`;
      const [first] = question.choices;
      const what = first === undefined ? '' : `, ${channelOf(first.channel).label},`;
      return `Which unit has ${quoted(question.column)}${what} ${question.choices.map(unitText).join(', ')}?${given}`;
    }
    case 'which column':
      return `Several columns give the ${channelOf(question.channel).label}. Which one counts: ${question.columns.map(quoted).join(', ')}?`;
    case 'wrong values':
      return `${quoted(question.column)} reads as ${channelOf(question.channel).label}, but ${Math.round(100 * question.share)} % of its first values cannot be that. What is it?`;
    case 'decimal sign':
      return `Is the comma or the point the decimal sign in ${quoted(question.column)}? Its numbers can be read in both ways.`;
    case 'clock':
      return `Is ${quoted(question.example)} in ${quoted(question.column)} hours and minutes, or minutes and seconds?`;
    case 'time':
      return 'No column gives the time. Which one is it, or how many seconds lie between two rows?';
  }
}
