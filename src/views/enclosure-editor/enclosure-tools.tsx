/** What the form of an enclosure offers beside its fields. */
import { useState } from 'react';
import type { FormHandle } from '../part-form/part-form';
import { AddFitting } from './add-fitting';
import { LimitsPanel } from './limits-panel';

export function EnclosureTools({ form }: { readonly form: FormHandle }) {
  const [isOpen, setOpen] = useState(form.spec === undefined);
  if (form.kind !== 'enclosure') return null;
  return (
    <>
      <details
        className="form-more limits-fold"
        open={isOpen}
        onToggle={(event) => setOpen(event.currentTarget.open)}
      >
        <summary>
          From a layout and published limits <span>cooler height, card length, room behind the tray …</span>
        </summary>
        {isOpen && <LimitsPanel form={form} />}
      </details>
      {form.spec?.kind === 'enclosure' && <AddFitting form={form} spec={form.spec} />}
    </>
  );
}
