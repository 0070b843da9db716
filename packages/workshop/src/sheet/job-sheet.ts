import { shortText } from '@wallflow/calculation';
import { absolutePressure, type Kind, type KindName, length, temperature } from '@wallflow/units';
import type { JobResult } from '../job/run-job.js';
import type { Block, Sheet } from './blocks.js';
import { customerBlocks } from './customer.js';
import { estimateBlocks } from './estimate.js';
import { cautionBlocks, evidenceBlocks } from './evidence.js';
import { readingsPlot, readingsTable } from './readings.js';
import {
  cleaningBlocks,
  comparisonBlocks,
  permissionBlocks,
  reductantBlocks,
  resetBlocks,
  sootBlocks,
  workshopVerdicts,
} from './sections.js';

function words(heading: string, text: string | undefined): Block[] {
  return text === undefined
    ? []
    : [
        { type: 'heading', text: heading },
        { type: 'paragraph', text },
      ];
}

function lines(heading: string, items: readonly string[] | undefined): Block[] {
  return items === undefined || items.length === 0
    ? []
    : [
        { type: 'heading', text: heading },
        { type: 'list', items },
      ];
}

/** A quantity as it was written, with the unit as people read it. */
function asRead<K extends KindName>(kind: Kind<K>, text: string | undefined): string | undefined {
  const parsed = text === undefined ? undefined : kind.parse(text);
  return parsed?.ok === true ? shortText(kind, parsed.quantity, parsed.unit) : text;
}

type Row = readonly [string, string | undefined];

function facts(rows: readonly Row[]): Block {
  return { type: 'facts', rows: rows.filter((row): row is readonly [string, string] => row[1] !== undefined) };
}

function headFacts({ job }: JobResult): Block {
  return facts([
    ['Vehicle', job.vehicle.description],
    ['Odometer', asRead(length, job.vehicle.odometer)],
    ['Date', job.date],
    ['Reference', job.reference],
    ['Technician', job.technician],
  ]);
}

function workshopFacts({ job }: JobResult): Block {
  const codes = (list: readonly string[] | undefined) => (list === undefined ? 'not read' : list.length === 0 ? 'none' : list.join('; '));
  return facts([
    ['Ambient pressure', asRead(absolutePressure, job.ambient.pressure)],
    ['Ambient temperature', asRead(temperature, job.ambient.temperature)],
    ['Fault codes before', codes(job.faultCodes?.before)],
    ['Fault codes after', codes(job.faultCodes?.after)],
  ]);
}

function leftOut({ before, after }: JobResult): Block[] {
  const items = [...before.leftOut.map((text) => `before: ${text}`), ...(after?.leftOut ?? []).map((text) => `after: ${text}`)];
  return items.length === 0 ? [] : [{ type: 'paragraph', text: `Left out: ${items.join('; ')}.` }];
}

/** The one sheet that a customer can read and a colleague can check. */
export function jobSheet(result: JobResult): Sheet {
  const { job } = result;
  return {
    title: job.title,
    blocks: [
      headFacts(result),
      ...customerBlocks(result),
      { type: 'heading', text: 'For the workshop' },
      workshopVerdicts(result),
      workshopFacts(result),
      ...words('Complaint', job.complaint),
      ...lines('History', job.history),
      ...cautionBlocks(result),
      { type: 'heading', text: 'What was measured' },
      readingsTable(result),
      ...leftOut(result),
      ...readingsPlot(result),
      ...comparisonBlocks(result),
      ...estimateBlocks(result),
      ...sootBlocks(result),
      ...permissionBlocks('before the work', result.permissionBefore, result.before.condition),
      ...cleaningBlocks(result),
      ...permissionBlocks('after the work', result.permissionAfter, result.after?.condition),
      ...reductantBlocks(result),
      ...resetBlocks(result),
      ...evidenceBlocks(result),
      { type: 'paragraph', text: 'The emission control of this vehicle is fitted and was not altered. Signature: ____________________' },
    ],
  };
}
