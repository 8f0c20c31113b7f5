#!/usr/bin/env node
import { Command, CommanderError } from 'commander';
import { TOOL_VERSION } from '../core/assess/tool-version.ts';
import { EXIT, printRefusals, Refused } from './output.ts';
import type { CircuitOptions } from './run-circuit.ts';

const CASE_ARGUMENT = 'case folder, or its case.json; with --casebook the id of a case';
const LEVEL_OPTION = ['--level <id>', 'level of a port to run at; the first one where none is named'] as const;
const CASEBOOK_OPTION = ['--casebook <file>', 'take the case from a casebook'] as const;

/** Commands load what they need when they are called: `--version` does not wait for the judge. */
function program(): Command {
  const command = new Command('mainsworthy')
    .description(
      'Judges a small mains adapter from what was seen and measured: readings in, a judgement out in which every number says where it came from.',
    )
    .version(TOOL_VERSION)
    .exitOverride()
    .showHelpAfterError();
  command
    .command('new')
    .argument('<dir>', 'folder to make')
    .description('make a folder with an empty case')
    .action(async (dir: string) => (await import('./command/new.ts')).newFolder(dir));
  command
    .command('assess')
    .argument('<case>', CASE_ARGUMENT)
    .option(...CASEBOOK_OPTION)
    .option('--json', 'print the whole Assessment as JSON')
    .description('judge a case')
    .action(async (path: string, options: { json?: boolean; casebook?: string }) =>
      (await import('./command/assess.ts')).assess(path, options),
    );
  command
    .command('explain')
    .argument('<case>', CASE_ARGUMENT)
    .argument('<what>', 'a step, a check or a finding, as the assessment names it')
    .option(...CASEBOOK_OPTION)
    .description('say where a number comes from, down to the readings')
    .action(async (path: string, what: string, options: { casebook?: string }) =>
      (await import('./command/explain.ts')).explain(path, what, options),
    );
  command
    .command('report')
    .argument('<case>', CASE_ARGUMENT)
    .option(...CASEBOOK_OPTION)
    .requiredOption('-o, --out <file>', 'HTML file to write')
    .description('write the report of a case')
    .action(async (path: string, options: { out: string; casebook?: string }) =>
      (await import('./command/report.ts')).report(path, options),
    );
  command
    .command('read')
    .argument('<file>', 'text file of an instrument')
    .option('--json', 'print the description as JSON')
    .option('--settle <code=answer...>', 'answer what the file does not say, by the code of the question')
    .description('show how an instrument file is understood, and what it does not say')
    .action(async (path: string, options: { json?: boolean; settle?: string[] }) =>
      (await import('./command/read.ts')).read(path, options),
    );
  command
    .command('foresee')
    .argument('<case>', 'case folder, or its case.json; with a casebook the id of the case')
    .argument('<soak>', 'a logged soak of the case, by its id')
    .option('--casebook <file>', 'the casebook that holds the case')
    .option('--within <kelvin>', 'how well its end is wanted, half of a 95 % interval', '1 K')
    .description('work out where the temperatures of a soak are going, and keep it in the case')
    .action(async (path: string, soak: string, options: { within: string; casebook?: string }) =>
      (await import('./command/foresee.ts')).foresee(path, soak, options),
    );
  command
    .command('decode')
    .argument('<codes...>', 'markings as printed on parts')
    .option('--json', 'print the readings as JSON, values in SI')
    .option('--as <kind>', 'what the part is: resistor, capacitor, inductor')
    .description('say what a marking on a part can mean')
    .action(async (codes: string[], options: { json?: boolean; as?: string }) =>
      (await import('./command/decode.ts')).decode(codes, options),
    );
  command
    .command('trace')
    .argument('<file>', 'text file of circuit lines')
    .option('--json', 'print parts and conductors as a case holds them')
    .description('read a traced circuit, one part a line, and say what each part is there for')
    .action(async (path: string, options: { json?: boolean }) => (await import('./command/trace.ts')).trace(path, options));
  command
    .command('schematic')
    .argument('<case>', CASE_ARGUMENT)
    .option(...CASEBOOK_OPTION)
    .requiredOption('-o, --out <file>', 'SVG file to write; with a name in .pdf one page of a PDF, in .html a sheet that a browser prints')
    .option('--dark', 'SVG for a dark ground')
    .option('--paper <size>', 'of the page or sheet: A4 or A3, lying', 'A4')
    .description('draw the traced circuit of a case')
    .action(async (path: string, options: { out: string; dark?: boolean; paper?: string; casebook?: string }) =>
      (await import('./command/schematic.ts')).schematic(path, options),
    );
  command
    .command('simulate')
    .argument('<case>', CASE_ARGUMENT)
    .option(...CASEBOOK_OPTION)
    .option(...LEVEL_OPTION)
    .option('--json', 'print the whole result as JSON')
    .description('run the traced circuit of a case at its operating points, beside what was measured, and keep them in the case')
    .action(async (path: string, options: CircuitOptions) => (await import('./command/simulate.ts')).simulate(path, options));
  command
    .command('faults')
    .argument('<case>', CASE_ARGUMENT)
    .option(...CASEBOOK_OPTION)
    .option(...LEVEL_OPTION)
    .option('--json', 'print the whole result as JSON')
    .description('run every single fault of the traced circuit of a case at three loads, and keep what becomes of them in the case')
    .action(async (path: string, options: CircuitOptions) => (await import('./command/faults.ts')).faults(path, options));
  command
    .command('demo')
    .option('-o, --out <dir>', 'folder for the reports', 'out/demo')
    .option('--once', 'end when the reports are written, without serving the workspace')
    .option('--port <n>', 'port to serve on')
    .description('judge the invented demo cases, write their reports, and serve them as a casebook')
    .action(async (options: { out: string; once?: boolean; port?: string }) => (await import('./command/demo.ts')).demo(options));
  addCasebookCommands(command);
  return command;
}

/** Commands on a casebook as a whole, and on the way of a case into it and out of it. */
function addCasebookCommands(command: Command): void {
  command
    .command('serve')
    .requiredOption('--casebook <file>', 'casebook to work on; made where there is none')
    .option('--port <n>', 'port to listen on')
    .option('--host <address>', 'address to listen on beyond this machine; then an access token is demanded')
    .description('serve the workspace of a casebook')
    .action(async (options: { casebook: string; port?: string; host?: string }) => (await import('./command/serve.ts')).serve(options));
  command
    .command('import')
    .argument('<folder>', 'case folder')
    .requiredOption('--casebook <file>', 'casebook to take it into; made where there is none')
    .description('take a case folder into a casebook')
    .action(async (folder: string, options: { casebook: string }) => (await import('./command/import.ts')).importCase(folder, options));
  command
    .command('export')
    .argument('<id>', 'id of a case')
    .requiredOption('--casebook <file>', 'casebook that holds it')
    .requiredOption('-o, --out <dir>', 'folder to write')
    .description('write a case of a casebook as a case folder, as it stands now')
    .action(async (id: string, options: { casebook: string; out: string }) =>
      (await import('./command/export.ts')).exportCase(id, options),
    );
  command
    .command('pack')
    .argument('<id>', 'id of a case')
    .requiredOption('--casebook <file>', 'casebook that holds it')
    .requiredOption('-o, --out <file>', 'zip archive to write')
    .description('write a case with its files and its whole history as one archive')
    .action(async (id: string, options: { casebook: string; out: string }) => (await import('./command/pack.ts')).pack(id, options));
  command
    .command('unpack')
    .argument('<archive>', 'archive that was packed')
    .requiredOption('--casebook <file>', 'casebook to take it into; made where there is none')
    .description('take a packed case into a casebook, whole or not at all')
    .action(async (file: string, options: { casebook: string }) => (await import('./command/unpack.ts')).unpack(file, options));
  command
    .command('backup')
    .argument('<casebook>', 'casebook file, also one that is in use')
    .requiredOption('-o, --out <file>', 'copy to write')
    .description('copy a casebook as it stands at one moment')
    .action(async (casebook: string, options: { out: string }) => (await import('./command/backup.ts')).backup(casebook, options));
  command
    .command('check')
    .argument('<casebook>', 'casebook file, also one that is in use')
    .description('read a whole casebook and hold it against its hashes')
    .action(async (casebook: string) => (await import('./command/check.ts')).check(casebook));
}

async function main(): Promise<number> {
  try {
    await program().parseAsync(process.argv);
    return EXIT.ok;
  } catch (error) {
    if (error instanceof Refused) {
      printRefusals(error.refusals);
      return EXIT.refused;
    }
    if (error instanceof CommanderError) return error.exitCode === 0 ? EXIT.ok : EXIT.usage;
    process.stderr.write(`A defect of the tool, not of your input: ${error instanceof Error ? error.message : String(error)}\n`);
    if (process.env['MAINSWORTHY_TRACE'] !== undefined && error instanceof Error) process.stderr.write(`${error.stack ?? ''}\n`);
    return EXIT.defect;
  }
}

process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') process.exit(EXIT.ok); // the reader went away: `... | head`
  throw error;
});
process.exitCode = await main();
