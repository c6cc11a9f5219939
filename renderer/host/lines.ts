/** Reads a stream of JSON texts, one a line. Empty lines are beats of a stream that has nothing to say. */

export async function* jsonLines(body: ReadableStream<Uint8Array>): AsyncGenerator<unknown, void, undefined> {
  const reader = body.getReader();
  const decoder = new TextDecoder();
  let rest = '';
  try {
    for (let part = await reader.read(); !part.done; part = await reader.read()) {
      rest += decoder.decode(part.value, { stream: true });
      const lines = rest.split('\n');
      rest = lines.pop() ?? '';
      for (const line of lines) if (line !== '') yield JSON.parse(line);
    }
    if (rest !== '') yield JSON.parse(rest);
  } finally {
    reader.releaseLock();
  }
}
