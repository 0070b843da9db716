import * as z from 'zod/mini';
import { jobSections } from '../job/description.js';

/**
 * The job as a form: each input is a section, with the fields of the calculations that read it. What is typed in becomes a job
 * file by `jobFromForm`.
 */
export const jobForm = z.strictObject(Object.fromEntries(jobSections.map(({ key, form }) => [key, form])));
