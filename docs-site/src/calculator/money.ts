import type { OutputField } from '@wallflow/calculation';

const fewestDigits = 5;

/** Whether an output is an amount of money to the last coin. An estimate of a cost, shown with fewer digits, is none. */
export function isMoney(field: OutputField | undefined): boolean {
  return field?.type === 'quantity' && field.kind.kind === 'money' && field.digits >= fewestDigits;
}

/** An amount as it is written on a bill: where a comma parts decimals, `31.600` would be read as 31 thousand. */
export function moneyText(amount: number): string {
  return amount.toFixed(2);
}

/** The amounts within a text or formula written as on a bill. */
export function moneyWithin(text: string): string {
  return text.replace(/\d+\.\d+/g, (amount) => moneyText(Number(amount)));
}
