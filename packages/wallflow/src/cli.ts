#!/usr/bin/env node
import { existsSync, mkdirSync, readFileSync, realpathSync, writeFileSync } from 'node:fs';
import { dirname, join, sep } from 'node:path';
import type { Io } from './io.js';
import { main } from './main.js';

function readFile(path: string): string | undefined {
  try {
    return readFileSync(path, 'utf8');
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return undefined;
    throw error;
  }
}

function readFileWithin(folder: string, name: string): string | undefined {
  const path = join(folder, name);
  if (!existsSync(path)) return undefined;
  const home = realpathSync(folder);
  if (!realpathSync(path).startsWith(home.endsWith(sep) ? home : home + sep)) throw new Error(`${name} lies outside the folder of the job`);
  return readFile(path);
}

async function readInput(): Promise<string | undefined> {
  if (process.stdin.isTTY) return undefined;
  const chunks: Buffer[] = [];
  for await (const chunk of process.stdin) chunks.push(chunk as Buffer);
  return Buffer.concat(chunks).toString('utf8');
}

const io: Io = {
  out: (text) => void process.stdout.write(text),
  error: (text) => void process.stderr.write(text),
  readInput,
  readFile,
  readFileWithin,
  writeFile: (path, text) => {
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, text);
  },
};

// A reader that has seen enough, such as `head`, closes the pipe; that is no fault.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
});

process.exitCode = await main(process.argv.slice(2), io);
