import { unitSymbol } from '@wallflow/units';
import { type ChannelName, channelOf } from '../channels/channels.js';
import { differenceIn, inUnit } from '../channels/scale.js';
import type { LeftOutReason } from '../clean/left-out.js';
import type { Sureness } from './plan.js';
import type { Question } from './question.js';
import type { LogReading } from './reading.js';

/** A log as it was understood, as plain data with units: what a program gets that does not count in SI. */
export interface LogData {
  readonly channels: readonly {
    readonly column: string;
    readonly channel: ChannelName;
    readonly unit: string;
    readonly how: string;
    readonly sure: Sureness;
  }[];
  readonly rows: number;
  readonly leftOut: readonly {
    readonly reason: LeftOutReason;
    readonly channel?: ChannelName;
    readonly count: number;
    readonly firstLine: number;
  }[];
  readonly windows: readonly {
    readonly from: number;
    readonly to: number;
    readonly values: {
      readonly [K in ChannelName]?: { readonly mean: number; readonly plusMinus: number; readonly unit: string; readonly samples: number };
    };
  }[];
  readonly questions: readonly Question[];
  readonly unused: readonly { readonly column: string; readonly why: string }[];
}

/** Digits beyond these are rounding of the conversion. */
const digits = 12;
const round = (value: number) => Number(value.toPrecision(digits));

/** A reading with its numbers in the units of the log's own columns. */
export function logData(reading: LogReading): LogData {
  const units = new Map(reading.channels.map(({ channel, unit }) => [channel, unit]));
  return {
    channels: reading.channels,
    rows: reading.rows,
    leftOut: reading.leftOut,
    windows: reading.windows.map(({ from, to, values }) => ({
      from: round(from),
      to: round(to),
      values: Object.fromEntries(
        Object.entries(values).map(([name, { mean, plusMinus, samples }]) => {
          const channel = name as ChannelName;
          const { kind, units: usual } = channelOf(channel);
          const unit = units.get(channel) ?? usual[0] ?? '1';
          return [
            name,
            {
              mean: round(inUnit(kind, mean, unit)),
              plusMinus: round(differenceIn(kind, plusMinus, unit)),
              unit: unitSymbol(kind, unit),
              samples,
            },
          ];
        }),
      ),
    })),
    questions: reading.questions,
    unused: reading.unused,
  };
}
