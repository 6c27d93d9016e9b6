/** Plan files: `<name>.elbowroom.json`, the plan as indented JSON. */
import { LARGEST_PLAN_TEXT, type Plan, type ReadResult, readPlan, writePlan } from '../../geometry';

export const PLAN_FILE_ENDING = '.elbowroom.json';

/** A file name made of the plan's name: letters, digits and hyphens of any alphabet. */
export function planFileName(name: string): string {
  const plain = name
    .toLowerCase()
    .replaceAll(/[^\p{L}\p{N}]+/gu, '-')
    .replaceAll(/^-+|-+$/g, '')
    .slice(0, 60);
  return `${plain || 'plan'}${PLAN_FILE_ENDING}`;
}

/** Hands the plan to the browser as a download. */
export function exportPlanFile(plan: Plan): void {
  const address = URL.createObjectURL(new Blob([writePlan(plan)], { type: 'application/json' }));
  const link = document.createElement('a');
  link.href = address;
  link.download = planFileName(plan.name);
  link.click();
  // The browser needs the address until the download has begun.
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}

/** Reads a file a person chose. Looks at its size before its content; never throws. */
export async function readPlanFile(file: File): Promise<ReadResult> {
  if (file.size > LARGEST_PLAN_TEXT) {
    const message = `is ${file.size} bytes long; a plan has at most ${LARGEST_PLAN_TEXT}`;
    return { ok: false, problems: [{ path: file.name, message }] };
  }
  try {
    return readPlan(await file.text());
  } catch {
    return { ok: false, problems: [{ path: file.name, message: 'could not be read from the disk' }] };
  }
}
