/**
 * The workshop job: logs, assessment, plan, verification and the job sheet.
 *
 * @module
 */
export { beforeAfterCalculation, calculations, filterConditionCalculation, resetAdviceCalculation } from './definitions.js';
export { jobForm } from './form/fields.js';
export { formFromJob } from './form/form-from-job.js';
export { placeInForm } from './form/issue-place.js';
export { type FormInput, type FormLogs, jobFromForm } from './form/job-from-form.js';
export { jobSections } from './job/description.js';
export { type Attempt, type Evaluation, type NoEvaluation, succeeded } from './job/evaluation.js';
export { type AttemptData, type JobData, jobData, type SideData } from './job/job-data.js';
export { type JobFile, jobFile } from './job/job-file.js';
export type { JobIssue } from './job/job-issue.js';
export { jobIssueText } from './job/job-issue-text.js';
export { jobSchema } from './job/job-schema.js';
export { type DeedOfState, type JobState, type JobVerdict, jobState, type KnownThing, type MissingThing } from './job/job-state.js';
export { type LogContent, type ReadFile, UnreadableFile } from './job/log-file.js';
export type { FlowReading, MeasuredSide } from './job/measured-side.js';
export { type JobLog, readJobLog } from './job/read-log.js';
export { type JobOutcome, type JobResult, runJob } from './job/run-job.js';
export type { SteadyReading } from './job/steady.js';
export { readingFields, readingList } from './job/typed-readings.js';
export { upToDate } from './job/version-1.js';
export { type Block, customerPage, type PlotSeries, type Sheet, type Tone, type VerdictLine } from './sheet/blocks.js';
export type { Claim, Said } from './sheet/claims.js';
export { contradictions, contradictoryPairs } from './sheet/contradictions.js';
export { jobAnnex, jobSheet } from './sheet/job-sheet.js';
export { claimsOf, type PrintedPair, printedContradictions, printedPairs } from './sheet/printed-pairs.js';
export { sheetAsHtml } from './sheet/to-html.js';
export { sheetAsMarkdown } from './sheet/to-markdown.js';
export { sheetAsText } from './sheet/to-text.js';
export { visibleText } from './sheet/visible-text.js';
