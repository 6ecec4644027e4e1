package lampwright.gear.exchange;

import java.util.List;
import java.util.stream.IntStream;
import lampwright.document.Json;
import lampwright.document.Reading;
import lampwright.gear.stock.GearId;
import lampwright.gear.stock.GearItem;
import lampwright.gear.stock.GearKind;

/** Invented gear of every kind, with every field that makes a table awkward. */
final class FiledExamples {

  private static final List<String> DOCUMENTS =
      List.of(
          """
          {'kind':'head','head':{'name':'=SUM(A1:A9)','energy_ws':400,'output':{'kind':
          'guide_number','guide_number_m':64.25},'pack':'-pack','long_burst_efficiency':0.7,
          'note':'Says "bang",\\nthen hums; 1,5 s.'},'count':3,'out_of_order':1,'condition':[
          {'date':'2026-05-01','note':'Modelling lamp cracked.'}],'readings':[{'head':
          '=SUM(A1:A9)','f_number':22,'tenths':3,'distance_m':1.5,'modifier':'Box, large'}]}
          """,
          """
          {'kind':'head','head':{'name':"'=quoted before",'energy_ws':0.1,'output':{'kind':
          'reading','f_number':31.7,'distance_m':2.5,'stops_down':0.3},'feed':'mains',
          'control':'voltage','note':'\\tA tab.'}}
          """,
          """
          {'kind':'pack','pack':{'name':'@pack','energy_ws':1200,'outlets':2,'note':'+2 cables'}}
          """,
          """
          {'kind':'modifier','modifier':{'name':'Box, large','kind':'octagon','face':{'shape':
          'disc','diameter_m':1.2},'loss_stops':-0.25,'grid':true,'grid_depth_to_width':1.5}}
          """,
          """
          {'kind':'modifier','modifier':{'name':'Measured','kind':'reflector','candela':{
          'vertical_deg':[0,45,90],'horizontal_deg':[0],'candela':[[100,50,0]]}}}
          """,
          """
          {'kind':'body','body':{'name':'Ångström 東京','width_mm':36,'height_mm':24,
          'sync':'1/200'}}
          """,
          "{'kind':'lens','lens':{'name':'Long','focal_length_mm':85,'widest_f_number':1.4}}",
          "{'kind':'gel','gel':{'name':'Straw','shift_mired':-65,'loss_stops':0.5}}",
          "{'kind':'neutral_density','neutral_density':{'name':'Grey 3','loss_stops':3}}",
          "{'kind':'stand','stand':{'name':'\\r\\nTall','highest_m':3.2},'count':12}");

  private FiledExamples() {}

  static List<FiledGear> all() {
    return IntStream.range(0, DOCUMENTS.size())
        .mapToObj(i -> new FiledGear(new GearId("gear%04d".formatted(i)), item(DOCUMENTS.get(i))))
        .toList();
  }

  static List<FiledGear> of(GearKind kind) {
    return all().stream().filter(gear -> gear.item().kind() == kind).toList();
  }

  private static GearItem item(String json) {
    String apostrophe = "\u0001";
    String text =
        json.replace("\"'=", "'" + apostrophe + "=")
            .replace("before\"", "before'")
            .replace("\"bang\"", "\\\"bang\\\"")
            .replace('\'', '"')
            .replace(apostrophe, "'");
    return switch (GearItem.FORM.read(Json.parse(text))) {
      case Reading.Sound<GearItem>(GearItem item) -> item;
      case Reading.Faulty<GearItem> faulty -> throw new AssertionError(faulty.problems());
    };
  }
}
