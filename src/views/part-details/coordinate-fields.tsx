/** Three numbers side by side. */
import { NumberField } from '../../ui/number-field';

interface CoordinateFieldsProps {
  readonly title: string;
  readonly axes: readonly [string, string, string];
  readonly values: readonly [number, number, number];
  readonly unit: string;
  readonly onChange: (values: [number, number, number]) => void;
  readonly limit?: number;
  readonly step?: number;
}

export function CoordinateFields(props: CoordinateFieldsProps) {
  const { title, axes, values, unit, onChange, limit = 5000, step = 1 } = props;
  const set = (index: number, value: number) => {
    const [x, y, z] = values.map((old, at) => (at === index ? value : old));
    onChange([x ?? 0, y ?? 0, z ?? 0]);
  };
  return (
    <div className="coordinates">
      {axes.map((axis, index) => (
        <NumberField
          key={axis}
          label={`${title} ${axis}, ${unit}`}
          value={values[index] ?? 0}
          min={-limit}
          max={limit}
          step={step}
          onChange={(value) => set(index, value)}
        />
      ))}
    </div>
  );
}
