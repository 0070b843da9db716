import { shortText } from '@wallflow/calculation';
import { absolutePressure, type Kind, type KindName, length, temperature } from '@wallflow/units';
import type { JobResult } from '../job/run-job.js';
import { asTyped } from '../job/typed-readings.js';
import type { Block, Sheet } from './blocks.js';
import { customerBlocks } from './customer.js';
import { estimateBlocks, planBlocks } from './estimate.js';
import { cautionBlocks, evidenceBlocks } from './evidence.js';
import { readingsTable } from './readings.js';
import {
  cleaningBlocks,
  comparisonBlocks,
  permissionBlocks,
  reductantBlocks,
  resetBlocks,
  resetReasonBlocks,
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

/** A quantity as it was written, with the unit as people read it. */
function asRead<K extends KindName>(kind: Kind<K>, given: unknown): string | undefined {
  const text = asTyped(given);
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

/** The sheet: a page for the customer, and one for the next workshop. What they rest on is the annex, a file of its own. */
export function jobSheet(result: JobResult): Sheet {
  const { job } = result;
  return {
    title: job.title,
    blocks: [
      headFacts(result),
      ...words('What you told us', job.complaint),
      ...customerBlocks(result),
      { type: 'heading', text: 'For the workshop' },
      workshopVerdicts(result),
      workshopFacts(result),
      ...words('History', job.history?.join('. ').replace(/\.\./g, '.')),
      ...leftOut(result),
      ...comparisonBlocks(result),
      ...estimateBlocks(result),
      ...reductantBlocks(result),
      ...resetBlocks(result),
      { type: 'paragraph', text: 'The emission control of this vehicle is fitted and was not altered. Signature: ____________________' },
    ],
  };
}

/** What the sheet rests on: cautions, every reading, options, permission by condition, assumptions, methods, sources. */
export function jobAnnex(result: JobResult): Sheet {
  return {
    title: `Annex: ${result.job.title}`,
    blocks: [
      headFacts(result),
      ...cautionBlocks(result),
      { type: 'heading', text: 'What was measured' },
      readingsTable(result),
      ...leftOut(result),
      ...planBlocks(result),
      ...sootBlocks(result),
      ...permissionBlocks('before the work', result.permissionBefore, result.before.condition, result.estimateBefore),
      ...cleaningBlocks(result),
      ...permissionBlocks('after the work', result.permissionAfter, result.after?.condition, result.estimateAfter),
      ...resetReasonBlocks(result),
      ...evidenceBlocks(result),
    ],
  };
}
