package pegbook.geometry.network;

import java.util.List;
import pegbook.geometry.Point;
import pegbook.measure.Length;
import pegbook.published.Table;

/** The published networks of the test resources. */
final class PublishedNetworks {
  private PublishedNetworks() {}

  static List<String> names() {
    return rows("summary").stream().map(row -> row.text("network")).toList();
  }

  static List<Table.Row> rows(String table) {
    return Table.read("/pegbook/geometry/network/networks-" + table).rows();
  }

  static List<Table.Row> rows(String table, String network) {
    return rows(table).stream().filter(row -> row.text("network").equals(network)).toList();
  }

  static Network network(String name) {
    return new Network(
        rows("points", name).stream().map(PublishedNetworks::point).toList(),
        rows("observations", name).stream().map(PublishedNetworks::distance).toList());
  }

  private static NetworkPoint point(Table.Row row) {
    Point at = new Point(row.number("east"), row.number("north"));
    return row.text("hold").equals("fixed")
        ? NetworkPoint.fixed(row.text("point"), at)
        : NetworkPoint.free(row.text("point"), at);
  }

  private static TapedDistance distance(Table.Row row) {
    return new TapedDistance(
        row.text("from"),
        row.text("to"),
        new Length(row.number("distance")),
        new Length(row.number("sigma")));
  }
}
