import { it } from 'vitest';
import { balanceKits, balanceTask } from '@/tests/support/balance-tasks';
import { balanceTemplates } from '@/lib/variants/bench/balance-variant';
import * as fair from '@/lib/variants/bench/balance-fairness';
import { bestClampMm, worstAt } from '@/lib/balance/answers';
it('x', () => {
  for (const t of balanceTemplates) for (const k of balanceKits) {
    let failed = 0; const out: string[] = [];
    for (let i = 0; i < 100; i++) { try { const v = balanceTask(`s${i}`, t, k);
      if (i < 3) { const b = bestClampMm(v, v.needed); out.push(`best ${b.toFixed(1)} start ${v.start.clampMm} bar ${v.bar.leastMm}-${v.bar.mostMm} hold ${v.holdingTorqueNm} tubeAbove ${v.tube.aboveAxisMm} worst/hold ${(worstAt(v, v.needed, b).torqueNm / v.holdingTorqueNm).toFixed(2)} w ${v.parts.find(p=>p.id==='weight-front')?.massKg}`); }
    } catch (e) { failed++; } }
    console.log(t, k, 'failed', failed, '\n  ' + out.join('\n  '));
  }
});
