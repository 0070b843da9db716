import { type AnyCalculation, citation, fieldOf, type InputField, isOptional, shapeOf } from '@wallflow/calculation';
import { inputJsonSchema } from '@wallflow/calculation/json-schema';
import { type ExitCode, type Io, json } from '../io.js';

function usage(field: InputField, optional: boolean): string {
  const need = optional
    ? 'may be left out'
    : 'default' in field && field.default !== undefined
      ? `default ${field.type === 'list' ? 'none' : String(field.default)}`
      : 'needed';
  switch (field.type) {
    case 'quantity':
      return `${field.kind.label}, ${need}; for example "${field.example}"; units ${field.units.slice(0, 6).join(', ')}`;
    case 'choice':
      return `${Object.keys(field.options).join(' | ')}, ${need}`;
    case 'count':
      return `whole number ${field.min} to ${field.max}, ${need}`;
    case 'flag':
      return `yes | no, ${need}`;
    case 'text':
      return `text, ${need}; for example "${field.example}"`;
    case 'list':
      return `list as JSON, ${field.min} to ${field.max} entries, ${need}; for example ${JSON.stringify(field.example)}`;
    case 'group':
      return `record as JSON, ${need}; for example ${JSON.stringify(field.example)}`;
  }
}

function section(title: string, lines: readonly string[]): string {
  return lines.length === 0 ? '' : `\n${title}\n${lines.map((line) => `  ${line}\n`).join('')}`;
}

function inputLines(calculation: AnyCalculation): string[] {
  return shapeOf(calculation.spec.inputs).flatMap(([key, schema]) => {
    const field = fieldOf(schema);
    return field === undefined ? [] : [`${key}: ${field.label}. ${usage(field, isOptional(schema))}`];
  });
}

function outputLines(calculation: AnyCalculation): string[] {
  return Object.entries(calculation.spec.outputs as Record<string, { label: string; type: string; units?: readonly string[] }>).map(
    ([key, field]) => `${key}: ${field.label}${field.units?.[0] === undefined ? '' : `, in ${field.units[0]}`}`,
  );
}

function describeJson(calculation: AnyCalculation) {
  const { spec, id, version, subject, title, example } = calculation;
  const { purpose, method, assumptions, limits, cautions, sources } = spec;
  const outputs = Object.fromEntries(
    Object.entries(spec.outputs as Record<string, { type: string; label: string; kind?: { kind: string }; units?: readonly string[] }>).map(
      ([key, field]) => [key, { type: field.type, label: field.label, kind: field.kind?.kind, units: field.units }],
    ),
  );
  return {
    id,
    version,
    subject,
    title,
    purpose,
    method,
    inputs: inputJsonSchema(calculation),
    outputs,
    example,
    assumptions,
    limits,
    cautions,
    sources,
  };
}

/** `wallflow describe <id>`: inputs, outputs, cautions, limits and sources of a calculation. */
export function describe(io: Io, calculation: AnyCalculation, asJson: boolean): ExitCode {
  if (asJson) {
    io.out(json(describeJson(calculation)));
    return 0;
  }
  const { spec } = calculation;
  const example = Object.entries(calculation.example as Record<string, unknown>).map(
    ([key, value]) => `${key}=${typeof value === 'object' ? `'${JSON.stringify(value)}'` : `"${String(value)}"`}`,
  );
  io.out(
    `${calculation.title} (${calculation.id} ${calculation.version}, ${calculation.subject})\n${spec.purpose}\nMethod: ${spec.method}\n` +
      section(
        'Cautions',
        spec.cautions.map((caution: { text: string }) => `! ${caution.text}`),
      ) +
      section('Inputs', inputLines(calculation)) +
      section('Outputs', outputLines(calculation)) +
      section(
        'Assumptions',
        spec.assumptions.map((note: { text: string }) => note.text),
      ) +
      section(
        'Limits of use',
        spec.limits.map((note: { text: string }) => note.text),
      ) +
      section(
        'Sources',
        Object.values(spec.sources as AnyCalculation['spec']['sources']).map((source) => citation(source as never)),
      ) +
      section('Example', [`wallflow run ${calculation.id} ${example.join(' ')}`]),
  );
  return 0;
}
