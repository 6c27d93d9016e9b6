/** Dense linear equations, row by row in one array; the systems of a machine's air have some forty unknowns. */

/**
 * Solves A x = b for a symmetric positive definite A (Cholesky); A and b are overwritten, b becomes x. Rows are worked
 * from their first entry that is not zero, which neighbouring cells keep near the diagonal. Returns false when A is
 * not positive definite.
 */
export function solveSymmetric(matrix: Float64Array, right: Float64Array): boolean {
  const n = right.length;
  const first = firstEntries(matrix, n);
  for (let i = 0; i < n; i++) {
    const row = i * n;
    const from = first[i] ?? 0;
    for (let j = from; j < i; j++) {
      const other = j * n;
      let sum = matrix[row + j] ?? 0;
      for (let k = Math.max(from, first[j] ?? 0); k < j; k++)
        sum -= (matrix[row + k] ?? 0) * (matrix[other + k] ?? 0);
      matrix[row + j] = sum / (matrix[other + j] ?? 1);
    }
    let diagonal = matrix[row + i] ?? 0;
    for (let k = from; k < i; k++) {
      const entry = matrix[row + k] ?? 0;
      diagonal -= entry * entry;
    }
    if (!(diagonal > 0)) return false;
    matrix[row + i] = Math.sqrt(diagonal);
  }
  for (let i = 0; i < n; i++) {
    let sum = right[i] ?? 0;
    for (let k = first[i] ?? 0; k < i; k++) sum -= (matrix[i * n + k] ?? 0) * (right[k] ?? 0);
    right[i] = sum / (matrix[i * n + i] ?? 1);
  }
  for (let i = n - 1; i >= 0; i--) {
    const value = (right[i] ?? 0) / (matrix[i * n + i] ?? 1);
    right[i] = value;
    for (let k = first[i] ?? 0; k < i; k++) right[k] = (right[k] ?? 0) - (matrix[i * n + k] ?? 0) * value;
  }
  return true;
}

function firstEntries(matrix: Float64Array, n: number): Int32Array {
  return Int32Array.from({ length: n }, (_, i) => {
    let column = 0;
    while (column < i && matrix[i * n + column] === 0) column++;
    return column;
  });
}

/** L and U of a square matrix in one array, with the order of its rows. */
export interface Factors {
  readonly size: number;
  readonly matrix: Float64Array;
  readonly order: Int32Array;
}

/** Factors a square matrix with row exchanges (overwrites it). Throws a RangeError when it is singular. */
export function factor(matrix: Float64Array, size: number): Factors {
  const order = Int32Array.from({ length: size }, (_, i) => i);
  for (let j = 0; j < size; j++) {
    let best = j;
    for (let i = j + 1; i < size; i++)
      if (Math.abs(matrix[i * size + j] ?? 0) > Math.abs(matrix[best * size + j] ?? 0)) best = i;
    const pivot = matrix[best * size + j] ?? 0;
    if (pivot === 0 || !Number.isFinite(pivot)) throw new RangeError('the equations have no single answer');
    if (best !== j) exchangeRows(matrix, order, size, best, j);
    for (let i = j + 1; i < size; i++) {
      const share = (matrix[i * size + j] ?? 0) / pivot;
      matrix[i * size + j] = share;
      if (share === 0) continue;
      for (let k = j + 1; k < size; k++)
        matrix[i * size + k] = (matrix[i * size + k] ?? 0) - share * (matrix[j * size + k] ?? 0);
    }
  }
  return { size, matrix, order };
}

function exchangeRows(matrix: Float64Array, order: Int32Array, size: number, a: number, b: number): void {
  for (let k = 0; k < size; k++) {
    const kept = matrix[a * size + k] ?? 0;
    matrix[a * size + k] = matrix[b * size + k] ?? 0;
    matrix[b * size + k] = kept;
  }
  const row = order[a] ?? 0;
  order[a] = order[b] ?? 0;
  order[b] = row;
}

/** Solves with the factors for one right side, which is left alone. */
export function solveFactored({ size, matrix, order }: Factors, right: Float64Array): Float64Array {
  const x = new Float64Array(size);
  for (let i = 0; i < size; i++) {
    let sum = right[order[i] ?? 0] ?? 0;
    for (let k = 0; k < i; k++) sum -= (matrix[i * size + k] ?? 0) * (x[k] ?? 0);
    x[i] = sum;
  }
  for (let i = size - 1; i >= 0; i--) {
    let sum = x[i] ?? 0;
    for (let k = i + 1; k < size; k++) sum -= (matrix[i * size + k] ?? 0) * (x[k] ?? 0);
    x[i] = sum / (matrix[i * size + i] ?? 1);
  }
  return x;
}
