/** `npm run plan -- check plan.json [--json]`: the solver on the command line. */
import { readFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { checkPlan, UNREADABLE } from './check-plan';

const USAGE = `usage: npm run plan -- check <plan file> [--json]

Prints the verdict, the findings and the clearances of a plan; with --json as JSON for machines.
Exit status: 0 everything fits, 1 it does not, 2 the plan cannot be read.`;

interface Request {
  readonly file: string;
  readonly json: boolean;
}

/** What the arguments ask for, or what is wrong with them. */
function readArguments(args: readonly string[]): Request | string {
  try {
    const { values, positionals } = parseArgs({
      args: [...args],
      allowPositionals: true,
      options: { json: { type: 'boolean', default: false } },
    });
    const [command, file, ...more] = positionals;
    if (command !== 'check') return command === undefined ? 'no command' : `unknown command “${command}”`;
    if (file === undefined) return 'no plan file';
    if (more.length > 0) return `more than one plan file: ${more.join(', ')}`;
    return { file, json: values.json };
  } catch (error) {
    return error instanceof Error ? error.message : String(error);
  }
}

function readText(file: string): string | Error {
  try {
    return readFileSync(file, 'utf8');
  } catch (error) {
    return error instanceof Error ? error : new Error(String(error));
  }
}

function run(args: readonly string[]): number {
  const request = readArguments(args);
  if (typeof request === 'string') {
    console.error(`${request}\n\n${USAGE}`);
    return UNREADABLE;
  }
  const text = readText(request.file);
  if (text instanceof Error) {
    console.error(`${request.file} cannot be read: ${text.message}`);
    return UNREADABLE;
  }
  const { output, errors, status } = checkPlan(text, request.json);
  if (output !== '') console.log(output);
  for (const error of errors) console.error(`${request.file}: ${error}`);
  return status;
}

process.exitCode = run(process.argv.slice(2));
