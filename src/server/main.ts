/** Starts the server of the worksheet. */
process.stdout.write('Kerfwright\n');
