/** Writes the person's own parts in the worker and hands them to the browser as a download. */
import { ImportClient } from '../../shelf/part-files/import-client';
import { PART_FILE_ENDING } from '../../shelf/part-files/part-file';
import { TABLE_ENDING } from '../../shelf/part-files/write-table';

/** How many parts were written. Rejects with words for the person. */
export async function downloadOwnParts(format: 'json' | 'csv'): Promise<number> {
  const client = new ImportClient(() => {});
  try {
    const reply = await client.ask({ type: 'write', format });
    if (reply.type !== 'written') throw new Error('The parts could not be written.');
    const address = URL.createObjectURL(reply.file);
    const link = document.createElement('a');
    link.href = address;
    link.download = `own${format === 'json' ? PART_FILE_ENDING : `-parts${TABLE_ENDING}`}`;
    link.click();
    // The browser needs the address until the download has begun.
    setTimeout(() => URL.revokeObjectURL(address), 10_000);
    return reply.count;
  } finally {
    client.close();
  }
}
