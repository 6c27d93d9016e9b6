/** What was measured on the real part: by whom, when, how, with a photo. */
import { useEffect, useState } from 'react';
import { findPhoto } from '../../shelf/photos';
import { dropEvidence } from '../../shelf/record-evidence';
import type { ShelfEntry } from '../../shelf/shelf-entry';
import { announce } from '../../store/status-store';
import type { Evidence } from '../../store/stored-records';
import { fieldText } from '../../ui/numbers';
import { EvidenceForm } from './evidence-form';

interface EvidenceSectionProps {
  readonly entry: ShelfEntry;
  readonly evidence: readonly Evidence[];
}

export function EvidenceSection({ entry, evidence }: EvidenceSectionProps) {
  const [adding, setAdding] = useState(false);
  const letGo = (one: Evidence) =>
    void dropEvidence(entry.id, one).catch(() => announce('The browser did not let the measurement go.'));
  return (
    <section aria-label="Measured on the part">
      <h3 className="heading">Measured on the part</h3>
      {evidence.length === 0 && !adding && <p className="quiet">Nothing yet: all figures are the sheet’s.</p>}
      <ul className="evidence-list">
        {evidence.map((one) => (
          <EvidenceRow key={one.id} evidence={one} onDrop={() => letGo(one)} />
        ))}
      </ul>
      {adding ? (
        <EvidenceForm entry={entry} onDone={() => setAdding(false)} />
      ) : (
        <button type="button" className="button small" onClick={() => setAdding(true)}>
          Add a measurement
        </button>
      )}
    </section>
  );
}

function EvidenceRow({ evidence, onDrop }: { readonly evidence: Evidence; readonly onDrop: () => void }) {
  const { title, value, unit, plusMinus, who, when, how, photo } = evidence;
  const band = plusMinus === undefined ? '' : ` ± ${fieldText(plusMinus)}`;
  return (
    <li>
      {photo !== undefined && <EvidencePhoto id={photo} about={title} />}
      <span>
        <strong>
          {title}: {fieldText(value)}
          {band} {unit}
        </strong>
        <br />
        <span className="quiet">{[when, who, how].filter(Boolean).join(', ')}</span>
      </span>
      <button
        type="button"
        className="button small plain"
        aria-label={`Let the measurement of ${title}, ${when}, go`}
        onClick={onDrop}
      >
        Let go
      </button>
    </li>
  );
}

function EvidencePhoto({ id, about }: { readonly id: string; readonly about: string }) {
  const [address, setAddress] = useState<string>();
  useEffect(() => {
    let made: string | undefined;
    let ended = false;
    findPhoto(id).then(
      (photo) => {
        if (!photo || ended) return;
        made = URL.createObjectURL(new Blob([photo.bytes], { type: photo.type }));
        setAddress(made);
      },
      () => undefined,
    );
    return () => {
      ended = true;
      if (made) URL.revokeObjectURL(made);
    };
  }, [id]);
  if (address === undefined) return null;
  return (
    <a href={address} target="_blank" rel="noreferrer">
      <img className="evidence-photo" src={address} alt={`Measuring ${about}`} />
    </a>
  );
}
