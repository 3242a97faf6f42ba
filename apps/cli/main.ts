/** deckbite: the command line. Each command is loaded only when it is asked for. */
import { reportBreakdown } from './breakdown.ts';
import { commands, helpFor, isCommand } from './help.ts';

async function main(argv: readonly string[]): Promise<number> {
  const [name, ...rest] = argv;
  if (name === undefined || name === '--help' || name === '-h' || name === 'help') {
    const about = rest[0] !== undefined && isCommand(rest[0]) ? rest[0] : undefined;
    process.stdout.write(helpFor(about));
    return name === undefined ? 3 : 0;
  }
  if (!isCommand(name)) {
    process.stderr.write(
      `"${name}" is no command of deckbite; there are: ${Object.keys(commands).join(', ')}\n`,
    );
    return 3;
  }
  if (rest.includes('--help') || rest.includes('-h')) {
    process.stdout.write(helpFor(name));
    return 0;
  }
  const { run } = await load(name);
  return run(rest);
}

interface Command {
  readonly run: (args: readonly string[]) => number | Promise<number>;
}

function load(name: keyof typeof commands): Promise<Command> {
  switch (name) {
    case 'solve':
      return import('./solve.ts');
    case 'clause':
      return import('./clause.ts');
    case 'schema':
      return import('./schema.ts');
    case 'demo':
      return import('./demo.ts');
    case 'designation':
      return import('./designation.ts');
    case 'ask':
      return import('./ask.ts');
    case 'margins':
      return import('./margins.ts');
  }
}

// A reader that closes the pipe early ("deckbite clause | head") is no fault.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') process.exit(0);
  throw error;
});

// What breaks outside the awaited call (a stream, a timer) must not leave the code of a verdict either.
process.on('uncaughtException', (error) => process.exit(reportBreakdown(error)));

process.exitCode = await main(process.argv.slice(2)).catch(reportBreakdown);
