#!/usr/bin/env node
import { mkdirSync, readdirSync, statSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import type { Io } from './io.js';
import { main } from './main.js';
import { readBytesWithin, readFile, readFileWithin, readParts, readStream } from './read-file.js';
import { reasonOf } from './reason.js';

const io: Io = {
  out: (text) => void process.stdout.write(text),
  error: (text) => void process.stderr.write(text),
  readInput: async () => (process.stdin.isTTY ? undefined : readStream(process.stdin)),
  readFile,
  readFileWithin,
  readBytesWithin,
  readParts,
  filesIn: (path) => (statSync(path, { throwIfNoEntry: false })?.isDirectory() === true ? readdirSync(path).sort() : undefined),
  readLogs: async (paths, mappings, onProgress) => (await import('@wallflow/logs/files')).readLogFiles(paths, { mappings, onProgress }),
  ...(process.stderr.isTTY ? { progress: (text: string) => void process.stderr.write(`\r\u001b[K${text}`) } : {}),
  writeFile: (path, text) => {
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, text);
  },
};

// A reader that has seen enough, such as `head`, closes the pipe; that is no fault. Output that is lost is one.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') return;
  process.stderr.write(`wallflow: the output cannot be written: ${reasonOf(error)}.\n`);
  process.exit(2);
});
// Who closed this, or has it on a full disk, cannot be told anything any more.
process.stderr.on('error', () => {});

process.exitCode = await main(process.argv.slice(2), io);
// An input that was not read to its end must not keep the command waiting.
process.stdin.destroy();
