import { isThere, startPostgresql, startRedis } from '../house/running-services/index.ts';
import { adviceForService, POSTGRESQL, REDIS } from '../house/services.ts';

/** A new database and the one Redis, as settings of servers. */
export type NewEnvironment = () => Promise<Readonly<Record<string, string>>>;

/**
 * Does it with a PostgreSQL and a Redis of its own, which end with it; without them it is
 * passed over, and what is missing comes back as a sentence.
 */
export async function withServices(
  work: (newEnvironment: NewEnvironment) => Promise<void>,
): Promise<string | null> {
  const missing = [POSTGRESQL, REDIS].find((service) => !isThere(service));
  if (missing !== undefined) return `${adviceForService(missing)} Only one server was measured.`;
  const [postgresql, redis] = await Promise.all([startPostgresql(), startRedis()]);
  try {
    await work(async () => ({
      DATABASE_URL: await postgresql.newDatabase(),
      REDIS_URL: redis.url,
    }));
  } finally {
    await Promise.all([postgresql.remove(), redis.remove()]);
  }
  return null;
}
