package pegbook.render;

/**
 * What stands at the foot of every page besides the sheet's title and the page number (fields of
 * ISO 7200). All texts are ready to print; an empty one prints nothing.
 *
 * @param job title of the job
 * @param revision revision of the job
 * @param issued date of issue
 * @param owner whose job it is
 * @param maker what made the packet
 * @param hash short hash of the job file
 * @param caution the line of caution
 */
public record TitleStrip(
    String job,
    String revision,
    String issued,
    String owner,
    String maker,
    String hash,
    String caution) {}
