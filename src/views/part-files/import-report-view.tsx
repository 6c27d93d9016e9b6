/** What a file holds, row by row: how many parts are good, and what is wrong with the others. */
import type { ImportReport } from '../../shelf/part-files/import-request';

interface ImportReportViewProps {
  readonly report: ImportReport;
  readonly fileName: string;
}

const count = new Intl.NumberFormat('en');

export function ImportReportView({ report, fileName }: ImportReportViewProps) {
  const { good, badRows, faults, refused } = report;
  if (refused !== undefined)
    return (
      <p className="file-refused" role="alert">
        {fileName} {refused}. Nothing was changed.
      </p>
    );
  const listed = new Set(faults.map(({ row }) => row)).size;
  return (
    <div className="file-report">
      <p role="status">
        {count.format(good)} {good === 1 ? 'part is' : 'parts are'} good.{' '}
        {badRows > 0 &&
          `${count.format(badRows)} ${badRows === 1 ? 'row is' : 'rows are'} not, and will be left out.`}
      </p>
      {faults.length > 0 && (
        <div className="file-scroll">
          <table className="file-table" aria-label="What is wrong">
            <thead>
              <tr>
                <th scope="col">Row</th>
                <th scope="col">Field</th>
                <th scope="col">What is wrong</th>
              </tr>
            </thead>
            <tbody>
              {faults.map(({ row, field, message }) => (
                <tr key={`${row} ${field} ${message}`}>
                  <td className="number">{row}</td>
                  <td>{field || 'whole row'}</td>
                  <td>{message}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      )}
      {listed < badRows && <p className="quiet">Only the first {count.format(listed)} of them are listed.</p>}
    </div>
  );
}
