/**
 * The product of `count` whole numbers downwards from `top`. Multiplied in halves of like size:
 * several hundred factors one after another would each drag the whole product along.
 * Formula  top (top - 1) … (top - count + 1)
 * Edges    count = 0: 1, the empty product
 * Checks   fallingFactorial(14n, 4) => 24024n    fallingFactorial(5n, 0) => 1n
 */
export function fallingFactorial(top: bigint, count: number): bigint {
  if (count <= 0) return 1n;
  if (count === 1) return top;
  const half = Math.floor(count / 2);
  return fallingFactorial(top, half) * fallingFactorial(top - BigInt(half), count - half);
}
