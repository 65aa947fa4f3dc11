package pegbook.testing;

import java.util.List;
import net.jqwik.api.lifecycle.AroundTryHook;
import net.jqwik.api.lifecycle.Lifespan;
import net.jqwik.api.lifecycle.PropagationMode;
import net.jqwik.api.lifecycle.Store;
import net.jqwik.api.lifecycle.TryExecutionResult;
import net.jqwik.api.lifecycle.TryExecutor;
import net.jqwik.api.lifecycle.TryLifecycleContext;

/**
 * Ends every property after its first tries, as many as {@code -Dpegbook.tries} says; without it,
 * nothing is changed. A mutation run starts the tests once for every class that it changes and
 * would take hours with all of them. What passes there passes with fewer tries than a build makes,
 * so the score it gives is on the low side.
 */
public final class FewTries implements AroundTryHook {
  private static final int MOST = Integer.getInteger("pegbook.tries", Integer.MAX_VALUE);

  @Override
  public TryExecutionResult aroundTry(
      TryLifecycleContext context, TryExecutor executor, List<Object> parameters) {
    TryExecutionResult result = executor.execute(parameters);
    Store<Integer> tries = Store.getOrCreate(FewTries.class, Lifespan.PROPERTY, () -> 0);
    tries.update(count -> count + 1);
    return result.isSatisfied() && tries.get() >= MOST
        ? TryExecutionResult.satisfied(true)
        : result;
  }

  @Override
  public PropagationMode propagateTo() {
    return PropagationMode.ALL_DESCENDANTS;
  }
}
