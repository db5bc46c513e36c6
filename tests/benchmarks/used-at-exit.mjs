// `node --import` this: a process writes what it has used to the file that USED_AT_EXIT names.
import { writeFileSync } from "node:fs";

process.on("exit", () => {
  const { userCPUTime, systemCPUTime, maxRSS } = process.resourceUsage();
  const used = { cpu: (userCPUTime + systemCPUTime) / 1e6, memory: maxRSS / 1024 };
  writeFileSync(process.env.USED_AT_EXIT, JSON.stringify(used));
});
