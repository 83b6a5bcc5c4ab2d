using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Files;

/// <summary>Every kind of fault of every file: its place and its words. Each row puts one fault into the small day.</summary>
public sealed class FieldFaultTests
{
    private const string Codes = "allowed 1 to 24 of A-Z a-z 0-9 . _ -";

    [Fact]
    public void The_small_day_itself_has_no_fault_and_no_note() =>
        ReadDay.With().Should().Match<Closeout.Files.DayFolder>(d => d.Given != null && d.Findings.Problems.Count == 0 && d.Findings.Notes.Count == 0);

    [Theory]
    [InlineData("depot.csv", "depot,Small Row", "depot,", "depot.csv:2:7: value is no short text: found nothing, allowed 1 to 200 characters")]
    [InlineData("depot.csv", "2026-03-04", "2026-02-29", "depot.csv:3:15: value is no date: found \"2026-02-29\", allowed YYYY-MM-DD, a day of the years 1900 to 2199")]
    [InlineData("depot.csv", "2026-03-04", "4/3/2026", "depot.csv:3:15: value is no date: found \"4/3/2026\", allowed YYYY-MM-DD, a day of the years 1900 to 2199")]
    [InlineData("depot.csv", "16:30", "24:00", "depot.csv:4:11: value is no time of day: found \"24:00\", allowed HH:MM, 00:00 to 23:59")]
    [InlineData("depot.csv", "units,us", "units,miles", "depot.csv:5:7: value is none of the words allowed: found \"miles\", allowed us, metric")]
    [InlineData("depot.csv", "service_1,0.98", "service_1,1", "depot.csv:6:11: value is no chance that can be kept: found \"1\", allowed above 0 and below 1")]
    [InlineData("depot.csv", "service_1,0.98", "service_1,0", "depot.csv:6:11: value is no number in range: found \"0\", allowed above 0 to 1, with a decimal point")]
    [InlineData("depot.csv", "container_cu_yd,8", "container_cu_yd,0", "depot.csv:9:17: value is no number in range: found \"0\", allowed above 0 to 10000, with a decimal point")]
    [InlineData("depot.csv", "percent,85", "percent,101", "depot.csv:10:24: value is no number in range: found \"101\", allowed above 0 to 100, with a decimal point")]
    [InlineData("depot.csv", "percent,85", "percent,85\ncrew_and_kit_lb,-1", "depot.csv:11:17: value is no number in range: found \"-1\", allowed 0 to 10000, with a decimal point")]
    [InlineData("depot.csv", "percent,85", "percent,85\ncrew_and_kit_lb,10000.5", "depot.csv:11:17: value is no number in range: found \"10000.5\", allowed 0 to 10000, with a decimal point")]
    [InlineData("depot.csv", "units,us\n", "", "depot.csv:1:1: a setting is missing: found no units, allowed are depot, business_date, shift_end, units, container_cu_yd, container_full_percent")]
    [InlineData("depot.csv", "units,us\n", "units,us\nunits,metric\n", "depot.csv:6:1: setting stands twice: found units again, allowed once")]
    [InlineData("items.csv", "LAMP,Lamp", "LA MP,Lamp", "items.csv:2:1: item is no code: found \"LA MP\", " + Codes)]
    [InlineData("items.csv", "LAMP,Lamp", "ABCDEFGHIJKLMNOPQRSTUVWXY,Lamp", "items.csv:2:1: item is no code: found \"ABCDEFGHIJKLMNOPQRSTUVWXY\", " + Codes)]
    [InlineData("items.csv", "HEAD,", "lamp,", "items.csv:3:1: item stands twice: found \"lamp\", allowed once, whatever the case of its letters")]
    [InlineData("items.csv", "Lamp,1,10", "Lamp,4,10", "items.csv:2:11: priority is no whole number in range: found \"4\", allowed 1 to 3")]
    [InlineData("items.csv", "Lamp,1,10", "Lamp,1,0", "items.csv:2:13: units_per_carton is no whole number in range: found \"0\", allowed 1 to 100000")]
    [InlineData("items.csv", "Lamp,1,10", "Lamp,1,1.5", "items.csv:2:13: units_per_carton is no whole number in range: found \"1.5\", allowed 1 to 100000")]
    [InlineData("items.csv", "12,8,4,", "12,13,4,", "items.csv:2:23: carton_width_in is above the length: found \"13\", allowed at most carton_length_in, 12")]
    [InlineData("items.csv", "12,8,4,", "12,8,1e1,", "items.csv:2:25: carton_depth_in is no number in range: found \"1e1\", allowed 0 to 1000, with a decimal point")]
    [InlineData("items.csv", "4,32ECT-C,20", "4,9ECT,20", "items.csv:2:27: board is not known: found \"9ECT\", allowed 32ECT-B, 32ECT-C, 44ECT-C, 51ECT-BC, or a row in boards.csv")]
    [InlineData("items.csv", "20,40,5", "20,19,5", "items.csv:2:38: high is below low: found \"19\", allowed at least low, 20")]
    [InlineData("vans.csv", "B2,2,Ruff", "B2,1,Ruff", "vans.csv:3:4: bay is taken by another van: found \"1\", allowed each bay once")]
    [InlineData("vans.csv", "B2,2,Ruff", "B2,0,Ruff", "vans.csv:3:4: bay is no whole number in range: found \"0\", allowed 1 to 100000")]
    [InlineData("vans.csv", "B2,2,Ruff", "b1,2,Ruff", "vans.csv:3:1: van stands twice: found \"b1\", allowed once, whatever the case of its letters")]
    [InlineData("vans.csv", "B2,2,Ruff", "bin,2,Ruff", "vans.csv:3:1: van is a place of its own in stock.csv: found \"bin\", allowed another code")]
    [InlineData("vans.csv", "B2,2,Ruff", "SHELF,2,Ruff", "vans.csv:3:1: van is a place of its own in stock.csv: found \"SHELF\", allowed another code")]
    [InlineData("vans.csv", "diesel,2000", "diesel,\"2,000\"", "vans.csv:3:23: odometer_mi is no number in range: found \"2,000\", allowed 0 to 2000000, with a decimal point")]
    [InlineData("kit.csv", "CONES,Cones,4,no", "CONES,Cones,4,never", "kit.csv:2:15: critical is none of the words allowed: found \"never\", allowed yes, no")]
    [InlineData("kit.csv", "FIRE,", "cones,", "kit.csv:3:1: kit_item stands twice: found \"cones\", allowed once, whatever the case of its letters")]
    [InlineData("crew.csv", "Bo Reed,technician", "Bo Reed,boss", "crew.csv:3:12: role is none of the words allowed: found \"boss\", allowed technician, lead")]
    [InlineData("crew.csv", "technician,B2", "technician,B9", "crew.csv:3:23: van is not in vans.csv: found \"B9\", allowed a code listed there")]
    [InlineData("crew.csv", "B2,Mon Tue Wed", "B2,Mon Tues Wed", "crew.csv:3:26: workdays has a day that is none: found \"Mon Tues Wed\", allowed Mon Tue Wed Thu Fri Sat Sun")]
    [InlineData("crew.csv", "T2,Bo", "t1,Bo", "crew.csv:3:1: technician stands twice: found \"t1\", allowed once, whatever the case of its letters")]
    [InlineData("visits.csv", "install,LAMP,6", "install,LUMP,6", "visits.csv:2:9: item is not in items.csv: found \"LUMP\", allowed a code listed there")]
    [InlineData("visits.csv", "LAMP,6,10\n", "LAMP,6,10\nINSTALL,lamp,1,1\n", "visits.csv:3:9: item stands twice for visit kind install: found \"lamp\", allowed once")]
    [InlineData("stock.csv", "shelf,LAMP,5,0", "shelf,LAMP,5,1", "stock.csv:2:14: loose on the shelf are sealed cartons only: found \"1\", allowed 0; loose units lie in the bin")]
    [InlineData("stock.csv", "bin,LAMP,0,7", "bin,LAMP,1,7", "stock.csv:3:10: cartons in the bin are loose units only: found \"1\", allowed 0; cartons stand on the shelf")]
    [InlineData("stock.csv", "B2,LAMP,1,4", "B1,lamp,1,4", "stock.csv:6:4: item stands twice at B1: found \"lamp\", allowed once")]
    [InlineData("stock.csv", "B2,LAMP,1,4", "attic,LAMP,1,4", "stock.csv:6:1: place is not in vans.csv: found \"attic\", allowed a code listed there")]
    public void A_fault_is_told_with_its_place_what_was_found_and_what_is_allowed(string file, string was, string now, string told) =>
        ReadDay.FaultsWith(file, was, now).Should().Contain(told);

    [Theory]
    [InlineData("van_limits.csv", "van,item,low,high", "B1,LAMP,9,8", "van_limits.csv:2:11: high is below low: found \"8\", allowed at least low, 9")]
    [InlineData("van_limits.csv", "van,item,low,high", "B1,LAMP,1,2\nb1,lamp,1,2", "van_limits.csv:3:4: item stands twice for van B1: found \"lamp\", allowed once")]
    [InlineData("van_limits.csv", "van,item,low,high", "B9,LAMP,1,2", "van_limits.csv:2:1: van is not in vans.csv: found \"B9\", allowed a code listed there")]
    [InlineData("usage.csv", "date,van,visit,visit_kind,item,units", "2026-03-03,B1,1,install,,2", "usage.csv:2:26: units are used of no item: found \"2\", allowed 0, or an item")]
    [InlineData("usage.csv", "date,van,visit,visit_kind,item,units", "2026-03-03,B1,1,install,LAMP,2\n2026-03-03,B1,1,recheck,HEAD,1", "usage.csv:3:17: visit_kind changes within visit \"1\": found \"recheck\", allowed install")]
    [InlineData("usage.csv", "date,van,visit,visit_kind,item,units", "2026-03-03,B1,1,install,LAMP,-1", "usage.csv:2:30: units is no whole number in range: found \"-1\", allowed 0 to 1000000")]
    [InlineData("bookings.csv", "date,van,visit_kind,visits", "2026-03-05,B7,install,2", "bookings.csv:2:12: van is not in vans.csv: found \"B7\", allowed a code listed there")]
    [InlineData("bookings.csv", "date,van,visit_kind,visits", "2026-03-05,B1,install,many", "bookings.csv:2:23: visits is no whole number in range: found \"many\", allowed 0 to 1000")]
    [InlineData("orders.csv", "item,cartons,due", "LAMP,3,soon", "orders.csv:2:8: due is no date: found \"soon\", allowed YYYY-MM-DD, a day of the years 1900 to 2199")]
    [InlineData("boards.csv", "board,weight_lb_per_msf", "own,0", "boards.csv:2:5: weight_lb_per_msf is no number in range: found \"0\", allowed above 0 to 10000, with a decimal point")]
    [InlineData("boards.csv", "board,weight_lb_per_msf", "own,9\nOWN,9", "boards.csv:3:1: board stands twice: found \"OWN\", allowed once")]
    public void A_fault_in_a_file_that_may_be_missing_is_told_as_well(string file, string header, string rows, string told) =>
        ReadDay.Faults(ReadDay.With((file, $"{header}\n{rows}\n"))).Should().Equal(told);

    [Theory]
    [InlineData("B9,T1,leftovers,bin,LAMP,3", "2:1: van is not in vans.csv: found \"B9\", allowed a code listed there")]
    [InlineData("B1,T9,leftovers,bin,LAMP,3", "2:4: technician is not in crew.csv: found \"T9\", allowed a code listed there")]
    [InlineData("B1,T1,lunch,bin,LAMP,3", "2:7: step is none of the words allowed: found \"lunch\", allowed leftovers, cardboard, mileage, damage, kit, weekly, sign")]
    [InlineData("B1,T1,leftovers,boxes,LAMP,3", "2:17: field is none of the words allowed: found \"boxes\", allowed sealed, bin, kept, installed")]
    [InlineData("B1,T1,leftovers,bin,LUMP,3", "2:21: item is not in items.csv: found \"LUMP\", allowed a code listed there")]
    [InlineData("B1,T1,leftovers,bin,,3", "2:21: item is needed for bin: found nothing, allowed a code")]
    [InlineData("B1,T1,leftovers,bin,LAMP,-3", "2:26: value is no whole number in range: found \"-3\", allowed 0 to 99999")]
    [InlineData("B1,T1,cardboard,flattened,LAMP,all", "2:32: value is no whole number in range: found \"all\", allowed 0 to 99999")]
    [InlineData("B1,T1,mileage,odometer,,12x", "2:25: value is no number in range: found \"12x\", allowed 0 to 2000000, with a decimal point")]
    [InlineData("B1,T1,mileage,fuel_gal,,0", "2:25: value is no number in range: found \"0\", allowed above 0 to 100, with a decimal point")]
    [InlineData("B1,T1,mileage,odometer,LAMP,12", "2:24: item has no place in step mileage: found \"LAMP\", allowed nothing")]
    [InlineData("B1,T1,damage,severity,,awful", "2:24: value is none of the words allowed: found \"awful\", allowed note, repair, unsafe")]
    [InlineData("B1,T1,kit,count,LAMP,1", "2:17: item is not in kit.csv: found \"LAMP\", allowed a code listed there")]
    [InlineData("B1,T1,kit,expires,FIRE,2027", "2:24: value is no date: found \"2027\", allowed YYYY-MM-DD, a day of the years 1900 to 2199")]
    [InlineData("B1,T1,weekly,clean,,perhaps", "2:21: value is none of the words allowed: found \"perhaps\", allowed yes, no")]
    [InlineData("B1,T1,weekly,photos,,-1", "2:22: value is no whole number in range: found \"-1\", allowed 0 to 99999")]
    public void A_fault_in_an_evenings_answers_is_told_with_its_place(string row, string told) =>
        ReadDay.Faults(ReadDay.With(SmallDay.Evening(row))).Should().Equal("evening.csv:" + told);

    [Theory]
    [InlineData("depot.csv")]
    [InlineData("items.csv")]
    [InlineData("vans.csv")]
    [InlineData("kit.csv")]
    [InlineData("crew.csv")]
    [InlineData("visits.csv")]
    [InlineData("stock.csv")]
    public void A_required_file_that_is_missing_is_one_fault_and_those_who_name_its_codes_are_not_blamed(string file) =>
        ReadDay.Faults(ReadDay.With((file, null))).Should().ContainSingle()
            .Which.Should().StartWith($"{file}:1:1: the file is missing: found nothing, allowed is a CSV file with the columns ");

    [Fact]
    public void Text_from_a_file_cannot_steer_the_terminal() =>
        ReadDay.FaultsWith("items.csv", "LAMP,Lamp,1", "LAMP,Lamp,\u001b[2J\u202e").Should().ContainSingle().Which.Should().Contain("found \"·[2J·\"");

    [Theory]
    [InlineData("service_1")]
    [InlineData("service_2")]
    [InlineData("service_3")]
    public void A_promised_service_that_is_not_set_is_the_usual_one(string setting) =>
        ReadDay.Faults(ReadDay.With(("depot.csv", string.Join("\n", SmallDay.Text("depot.csv").Split('\n').Where(l => !l.StartsWith(setting, StringComparison.Ordinal))))))
            .Should().BeEmpty("the plan's rules give a default for each");
}
