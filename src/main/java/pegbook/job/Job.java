package pegbook.job;

import java.util.List;
import java.util.Optional;
import pegbook.measure.Length;

/**
 * One structure to be built.
 *
 * @param name file name of the job without its ending; names the packet's folder
 * @param heading title, revision, dates, units and paper
 * @param place where it is and who decides there
 * @param site boundary, setbacks, fixed features
 * @param ground soil, digging, frost, bearing, levels
 * @param layout outline, bearing of the figure, baseline, tapes
 * @param supports the footings that carry the floor, all alike
 * @param piers the isolated footings that carry instruments
 * @param floor what the supports carry, where given
 * @param wind what wind lifts, where given
 * @param design what it is designed for, as far as somebody said
 * @param crew who works, how long, on which days
 * @param plan what the days must reckon with
 * @param tools what the crew digs with
 * @param spoil how dug soil is carried and where it goes
 * @param concrete bags, strength, waste
 * @param stock what bars are cut from
 * @param shop how things are sold and fetched
 * @param prices what things cost, where any price is known
 * @param field what was really marked and dug
 * @param power the buried power line, where there is one
 * @param defaults every value that the job left out, as it was filled in
 */
public record Job(
    String name,
    Heading heading,
    Place place,
    Site site,
    Ground ground,
    Layout layout,
    Supports supports,
    List<Pier> piers,
    Optional<Floor> floor,
    Optional<Wind> wind,
    Design design,
    Crew crew,
    Plan plan,
    List<Tool> tools,
    Spoil spoil,
    Concrete concrete,
    Stock stock,
    Shop shop,
    Optional<Prices> prices,
    Field field,
    Optional<Power> power,
    List<Default> defaults) {
  public Job {
    piers = List.copyOf(piers);
    tools = List.copyOf(tools);
    defaults = List.copyOf(defaults);
  }

  /** What keeps frost off the side of a footing: a pier's own word, else that of the supports. */
  public Optional<Side> side(String mark) {
    return piers.stream()
        .filter(pier -> pier.id().equals(mark))
        .findFirst()
        .map(Pier::side)
        .orElseGet(supports::side);
  }

  /** The floor's boards, where the job has a frame. */
  public Optional<Frame.Boards> boards() {
    return floor.flatMap(Floor::frame).map(Frame::boards);
  }

  /** The same job whose floor says how high its frame is, where it did not say so itself. */
  public Job withBuildUp(Optional<Length> height) {
    Optional<Floor> framed =
        floor.map(
            some ->
                new Floor(
                    some.use(),
                    some.live(),
                    some.dead(),
                    some.groundSnow(),
                    some.top(),
                    some.buildUp().or(() -> height),
                    some.frame()));
    return new Job(
        name, heading, place, site, ground, layout, supports, piers, framed, wind, design, crew,
        plan, tools, spoil, concrete, stock, shop, prices, field, power, defaults);
  }
}
