/**
 * Does something while the environment is a plain object: the reader of YAML looks into it at each of its tokens, and the
 * true one asks the system every time, which is a sixth of the reading. Whatever is done must end where it began, without
 * waiting in turns.
 */
export function inPlainEnvironment<Done>(does: () => Done): Done {
  const { env } = process;
  process.env = { ...env };
  try {
    return does();
  } finally {
    process.env = env;
  }
}
