/** What a cell was read as, or why it could not be. */
export type Read<Value> = { readonly value: Value } | { readonly reason: string };

export const isRefused = <Value>(read: Read<Value>): read is { readonly reason: string } => "reason" in read;
