package pegbook.jobfile;

import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Where each value of a job file stands; kept beside the job, not in it.
 *
 * @param byPath places by path, such as {@code piers[0].hole}; the whole file's path is empty
 */
public record LineMap(SortedMap<String, Location> byPath) {
  public LineMap {
    byPath = Collections.unmodifiableSortedMap(new TreeMap<>(byPath));
  }

  /** Where a value stands; for one that was left out, the nearest part round it that was not. */
  public Location of(String path) {
    String part = path;
    while (!part.isEmpty()) {
      Location found = byPath.get(part);
      if (found != null) {
        return found;
      }
      part = part.substring(0, Math.max(0, Math.max(part.lastIndexOf('.'), part.lastIndexOf('['))));
    }
    return byPath.getOrDefault("", Location.START);
  }
}
