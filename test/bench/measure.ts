/** One way of answering the question of a workload; `run` returns how many answers it found, for comparison. */
export interface Contestant {
  readonly name: string;
  readonly run: () => number;
  /** How many units of work one run does, for the time per unit; 1 unless told. */
  readonly units?: number;
  /** Takes part in this many rounds at most (slow contestants). */
  readonly rounds?: number;
}

export interface Timing {
  readonly name: string;
  /** Median milliseconds of processor time per unit of work. */
  readonly median: number;
  readonly answers: number;
  readonly rounds: number;
}

/** The middle value; the mean of the two middle ones for an even count. NaN for none. */
export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const upper = sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
  const lower = sorted[Math.ceil(sorted.length / 2) - 1] ?? Number.NaN;
  return (lower + upper) / 2;
}

/** Milliseconds of processor time this process has taken so far, all its threads. */
function processorTime(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

/**
 * Times the contestants in turns, round after round, so that a busy moment of the machine hits all of them, after
 * one round that only warms up. Processor time, so that waiting for other programs does not count.
 */
export function timeInTurns(contestants: readonly Contestant[], rounds: number): readonly Timing[] {
  const times = contestants.map((): number[] => []);
  const answers = contestants.map(() => 0);
  for (let round = 0; round <= rounds; round++) {
    contestants.forEach((contestant, index) => {
      if (round > Math.min(rounds, contestant.rounds ?? rounds)) return;
      const start = processorTime();
      answers[index] = contestant.run();
      const spent = (processorTime() - start) / (contestant.units ?? 1);
      if (round > 0) times[index]?.push(spent);
    });
  }
  return contestants.map((contestant, index) => ({
    name: contestant.name,
    median: median(times[index] ?? []),
    answers: answers[index] ?? 0,
    rounds: times[index]?.length ?? 0,
  }));
}
