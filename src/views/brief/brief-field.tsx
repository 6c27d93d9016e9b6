/** The fields of the brief in the order they are asked. */
import type { BriefText } from './brief-text';

type Choices = readonly (readonly [value: string, title: string])[];

const CHOICES: { readonly [K in keyof BriefText]?: Choices } = {
  mains: [
    ['', 'Not said (230 V)'],
    ['115', '115 V'],
    ['230', '230 V'],
  ],
  carried: [
    ['', 'Not said'],
    ['never', 'Never'],
    ['yearly', 'Yearly'],
    ['monthly', 'Monthly'],
    ['weekly', 'Weekly'],
    ['daily', 'Daily'],
  ],
  placeUpright: [
    ['', 'Any way round'],
    ['yes', 'Upright only'],
  ],
};

type Field = readonly [key: keyof BriefText, title: string, rows?: number];

export const FIELDS: readonly Field[] = [
  ['client', 'Client'],
  ['revision', 'Revision of the plan'],
  ['purpose', 'What it is for', 3],
  ['budget', 'Budget'],
  ['currency', 'Currency, three letters'],
  ['roomTemperature', 'Room temperature, °C'],
  ['decibels', 'Noise wish, dB'],
  ['metres', 'heard from, m'],
  ['altitude', 'Height above the sea, m'],
  ['mains', 'Mains'],
  ['stands', 'Where it stands'],
  ['carried', 'How often it is carried'],
  ['placeName', 'Must go into (a bag, a gap)'],
  ['placeLength', 'Its clear length, mm'],
  ['placeHeight', 'Its clear height, mm'],
  ['placeWidth', 'Its clear width, mm'],
  ['placeUpright', 'Turned'],
  ['upgrades', 'Upgrades to keep open, one a line', 3],
  ['notes', 'Notes', 3],
];

interface BriefFieldProps {
  readonly field: Field;
  readonly value: string;
  readonly onChange: (value: string) => void;
}

export function BriefField({ field: [key, title, rows], value, onChange }: BriefFieldProps) {
  const id = `brief-${key}`;
  const choices = CHOICES[key];
  return (
    <div className="labelled" data-wide={rows !== undefined || key === 'client'}>
      <label htmlFor={id}>{title}</label>
      {choices ? (
        <select id={id} className="select" value={value} onChange={({ target }) => onChange(target.value)}>
          {choices.map(([choice, name]) => (
            <option key={choice} value={choice}>
              {name}
            </option>
          ))}
        </select>
      ) : rows === undefined ? (
        <input
          id={id}
          className="field"
          maxLength={key === 'revision' ? 20 : 200}
          value={value}
          onChange={({ target }) => onChange(target.value)}
        />
      ) : (
        <textarea
          id={id}
          className="field"
          rows={rows}
          maxLength={key === 'notes' ? 10_000 : 4000}
          value={value}
          onChange={({ target }) => onChange(target.value)}
        />
      )}
    </div>
  );
}
