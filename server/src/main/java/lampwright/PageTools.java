package lampwright;

import lampwright.tasks.SearchNews;
import lampwright.tasks.Studios;
import lampwright.web.http.Door;
import lampwright.web.http.Entrance;
import lampwright.web.http.LinkAddresses;
import lampwright.web.http.Visitors;
import lampwright.web.pages.Assets;
import lampwright.web.pages.DrawnSetups;
import lampwright.web.pages.Layouts;
import lampwright.web.pages.Notations;
import lampwright.web.pages.OwnLayouts;
import lampwright.web.pages.StudioLayouts;
import lampwright.web.pages.Templates;

/** What every page is made with. */
record PageTools(
    Door door,
    Entrance entrance,
    Assets assets,
    Templates templates,
    Layouts layouts,
    StudioLayouts studioLayouts,
    OwnLayouts ownLayouts,
    LinkAddresses links,
    DrawnSetups drawings) {

  static PageTools of(Settings settings, Door door, Studios studios, SearchNews news) {
    Entrance entrance =
        new Entrance(door, new Visitors(settings.isBehindProxy()), settings.isSecure());
    Assets assets = Assets.fromClassPath();
    Layouts layouts = new Layouts(door, assets, Notations.fromClassPath());
    StudioLayouts studioLayouts = new StudioLayouts(door, studios, layouts, news);
    return new PageTools(
        door,
        entrance,
        assets,
        new Templates(),
        layouts,
        studioLayouts,
        new OwnLayouts(door, studios, studioLayouts),
        new LinkAddresses(settings.publicUrl()),
        new DrawnSetups());
  }
}
