#!/usr/bin/env node
import { Command, CommanderError } from 'commander';
import { TOOL_VERSION } from '../core/assess/assess.ts';
import { EXIT, printRefusals, Refused } from './output.ts';

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
    .argument('<case>', 'case folder, or its case.json')
    .option('--json', 'print the whole Assessment as JSON')
    .description('judge a case')
    .action(async (path: string, options: { json?: boolean }) => (await import('./command/assess.ts')).assess(path, options));
  command
    .command('explain')
    .argument('<case>', 'case folder')
    .argument('<what>', 'a step, a check or a finding, as the assessment names it')
    .description('say where a number comes from, down to the readings')
    .action(async (path: string, what: string) => (await import('./command/explain.ts')).explain(path, what));
  command
    .command('report')
    .argument('<case>', 'case folder')
    .requiredOption('-o, --out <file>', 'HTML file to write')
    .description('write the report of a case')
    .action(async (path: string, options: { out: string }) => (await import('./command/report.ts')).report(path, options));
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
    .command('decode')
    .argument('<codes...>', 'markings as printed on parts')
    .option('--json', 'print the readings as JSON, values in SI')
    .option('--as <kind>', 'what the part is: resistor, capacitor, inductor')
    .description('say what a marking on a part can mean')
    .action(async (codes: string[], options: { json?: boolean; as?: string }) =>
      (await import('./command/decode.ts')).decode(codes, options),
    );
  command
    .command('demo')
    .option('-o, --out <dir>', 'folder for the reports', 'out/demo')
    .description('judge the invented demo cases and write their reports')
    .action(async (options: { out: string }) => (await import('./command/demo.ts')).demo(options));
  return command;
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
