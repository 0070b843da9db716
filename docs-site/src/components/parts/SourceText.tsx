import type { ReactNode } from 'react';

/** Names of files and of functions of other programs, which a source may cite. */
const programNames = /((?:[\w-]+\/)*[\w-]+\.(?:py|ts|mjs|json|csv)\b|\b[a-z]{2,}(?:_[a-z]{2,})+\b)/;

/** A source as a sentence, in which the names of programs are set apart as such. */
export function SourceText({ text }: { readonly text: string }): ReactNode {
  return text.split(programNames).map((part, index) => (index % 2 === 1 ? <code key={index}>{part}</code> : part));
}
