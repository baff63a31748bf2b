/**
 * Runs what a script is for. A reader that has seen enough (`| head`) closes the pipe: that is no failure. An error ends it
 * with status 1.
 * @param isKnown an error whose sentence says all there is to say; of any other the stack is shown
 */
export function program(main: () => Promise<void>, isKnown: (error: unknown) => boolean): void {
  process.stdout.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code === 'EPIPE') process.exit(0);
    throw error;
  });
  main().catch((error: unknown) => {
    const text = error instanceof Error ? (isKnown(error) ? error.message : error.stack) : String(error);
    process.stderr.write(`${text}\n`);
    process.exitCode = 1;
  });
}
