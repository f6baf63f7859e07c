import { chosenUnits, chooseTheme, chooseUnits, theme, type Theme } from '../state/settings';
import { route } from '../state/route';
import type { UnitChoice } from '../lib/units';
import { unpaired } from '../api/client';
import { BuildWay } from './BuildNav';
import { PairView } from './PairView';
import { ShopView } from './ShopView';

export function App() {
  const { value: place } = route;
  return (
    <>
      <a class="skip" href="#main" onClick={(event) => {
        event.preventDefault();
        document.getElementById('main')?.focus();
      }}>
        Go to the content
      </a>
      <Header />
      <main id="main" tabIndex={-1}>
        {unpaired.value ? <PairView /> : place.view === 'shop' ? <ShopView /> : <BuildWay id={place.id} way={place.way} />}
      </main>
      <Footer />
    </>
  );
}

function Header() {
  return (
    <header class="top">
      <nav aria-label="Places">
        <a class="brand" href="#/" aria-current={route.value.view === 'shop' ? 'page' : undefined}>
          <Mark />
          Hotday
        </a>
      </nav>
      <div class="settings">
        <label>
          <span>Units</span>
          <select
            title="Sheet: as each sheet has it. Mixed: degF and psi, the rest metric"
            value={chosenUnits.value ?? ''}
            onChange={(e) => chooseUnits(e.currentTarget.value === '' ? null : (e.currentTarget.value as UnitChoice))}
          >
            <option value="">Sheet</option>
            <option value="metric">Metric</option>
            <option value="us">US</option>
            <option value="mixed">Mixed</option>
          </select>
        </label>
        <label>
          <span>Light</span>
          <select title="Auto: as the device has it" value={theme.value} onChange={(e) => chooseTheme(e.currentTarget.value as Theme)}>
            <option value="auto">Auto</option>
            <option value="light">Bright</option>
            <option value="dark">Dark</option>
          </select>
        </label>
      </div>
    </header>
  );
}

function Mark() {
  return (
    <svg class="mark" viewBox="0 0 32 32" width="32" height="32" aria-hidden="true">
      <path class="ground" d="M3 24h26" />
      <path class="sun" d="M8 20a8 8 0 0 1 16 0z" />
      <path class="rays" d="M16 4v5M5.500 9.500l3 3M26.500 9.500l-3 3" />
    </svg>
  );
}

function Footer() {
  return (
    <footer class="bottom">
      <p>
        <strong>Caution.</strong> A prediction is advice with an interval, not a warranty. Local codes and licensed practice come
        first. Fans start without warning, also with the key off.
      </p>
    </footer>
  );
}
