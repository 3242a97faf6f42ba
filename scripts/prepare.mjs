// npm runs this after an install in the repository and before packing. It must never fail an
// install, so a build that cannot run is left to `npm run build`, which says why.
import { build, cannotBuild } from './build.mjs';
import { markInstalled } from './install-mark.mjs';

markInstalled();
if (!cannotBuild()) {
  await build().catch((error) => console.error(`prepare: not built: ${error.message}`));
}
