/**
 * Solves A·x = b in place by elimination with row pivoting; b becomes x.
 *
 * @param matrix rows of `size` numbers, row after row
 */
export function solveLinear(matrix: Float64Array, right: Float64Array, size: number): void {
  for (let k = 0; k < size; k++) {
    let pivot = k;
    for (let row = k + 1; row < size; row++) {
      if (magnitude(matrix, row, k, size) > magnitude(matrix, pivot, k, size)) pivot = row;
    }
    if (magnitude(matrix, pivot, k, size) === 0) throw new RangeError('singular equations');
    if (pivot !== k) swapRows(matrix, right, pivot, k, size);
    const divide = 1 / (matrix[k * size + k] as number);
    for (let row = k + 1; row < size; row++) {
      const factor = (matrix[row * size + k] as number) * divide;
      if (factor === 0) continue;
      for (let column = k; column < size; column++) {
        const at = row * size + column;
        matrix[at] = (matrix[at] as number) - factor * (matrix[k * size + column] as number);
      }
      right[row] = (right[row] as number) - factor * (right[k] as number);
    }
  }
  for (let k = size - 1; k >= 0; k--) {
    let sum = right[k] as number;
    for (let column = k + 1; column < size; column++) {
      sum -= (matrix[k * size + column] as number) * (right[column] as number);
    }
    right[k] = sum / (matrix[k * size + k] as number);
  }
}

function magnitude(matrix: Float64Array, row: number, column: number, size: number): number {
  return Math.abs(matrix[row * size + column] as number);
}

function swapRows(
  matrix: Float64Array,
  right: Float64Array,
  one: number,
  other: number,
  size: number,
): void {
  for (let column = 0; column < size; column++) {
    const kept = matrix[one * size + column] as number;
    matrix[one * size + column] = matrix[other * size + column] as number;
    matrix[other * size + column] = kept;
  }
  const kept = right[one] as number;
  right[one] = right[other] as number;
  right[other] = kept;
}
