import { runCommand } from './command.ts';

// A reader that has seen enough (head, less) closes the pipe: no fault of the rehearsal.
process.stdout.on('error', (e: NodeJS.ErrnoException) => {
  if (e.code !== 'EPIPE') throw e;
});

const { stdout, stderr, status } = runCommand(process.argv.slice(2));
process.stdout.write(stdout);
process.stderr.write(stderr);
process.exitCode = status;
