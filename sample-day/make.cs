#:property EnforceCodeStyleInBuild=false
// Writes the day folder of the Saltmarsh Row demo: invented people, places and numbers.
//   dotnet run sample-day/make.cs [OUTPUT FOLDER]       default: sample-day under the current directory, or the
//                                                       current directory itself when that is sample-day
// The story is written by hand in the tables below; chance only fills in past visits and quiet stock.
// Chance is our own splitmix64 over whole numbers, so the bytes depend on nothing but this file.

using System.Globalization;
using System.Text;

var root = args.Length > 0 ? args[0]
    : Path.GetFileName(Directory.GetCurrentDirectory()) == "sample-day" ? "." // started inside the folder itself
    : "sample-day";
Directory.CreateDirectory(root);

var today = new DateOnly(2026, 11, 18); // a Wednesday, ISO week 47
var chance = new Chance(20261118);

// ---- settings and people -------------------------------------------------------------------------

Write("depot.csv", "setting,value", Rows("""
    depot             | Saltmarsh Row
    business_date     | 2026-11-18
    shift_end         | 16:30
    units             | us
    service_1         | 0.98
    service_2         | 0.95
    service_3         | 0.90
    container_cu_yd   | 8
    container_full_percent | 85
    cardboard_lb_per_cu_yd | 106
    ghg_factor_mtco2e_per_short_ton | -3.32
    ghg_factor_source | EPA WARM v15, corrugated containers: recycled -3.14 less landfilled 0.18
    streams           | lamps thermostats batteries film
    """));

// B2 will have 410 mi to its service after tonight's odometer; B5 is due by date on 2026-12-08.
string[][] vans = Rows("""
    B1 | 1 | Avocet  | 1500 | regular | 41236 | 5000 | 6 | 38900 | 2026-07-20
    B2 | 2 | Bittern | 1500 | regular | 62480 | 5000 | 6 | 57953 | 2026-08-03
    B3 | 3 | Curlew  | 1650 | diesel  | 28114 | 5000 | 6 | 25600 | 2026-08-24
    B4 | 4 | Dunlin  | 1800 | diesel  | 87305 | 5000 | 6 | 85010 | 2026-09-14
    B5 | 5 | Egret   | 1450 | regular | 53871 | 5000 | 6 | 51200 | 2026-06-08
    B6 | 6 | Fulmar  | 1600 | regular | 35652 | 5000 | 6 | 33020 | 2026-09-02
    """);
Write("vans.csv", "van,bay,name,payload_lb,fuel,odometer_mi,service_every_mi,service_every_months,last_service_mi,last_service_on", vans);

// T05 does not work after Wednesday, so B2 has its weekly check tonight; T14 drives B2 on Thursdays and Fridays.
Write("crew.csv", "technician,name,role,van,workdays", Rows("""
    T02 | Tola Wren     | technician | B1 | Mon Tue Wed Thu Fri
    T03 | Ines Marsh    | technician | B4 | Mon Tue Wed Thu Fri
    T05 | Odo Sedge     | technician | B2 | Mon Tue Wed
    T07 | Perrin Shoal  | technician | B3 | Mon Tue Wed Thu Fri
    T09 | Mave Saltby   | technician | B5 | Mon Tue Wed Thu Fri
    T11 | Bram Oarlock  | technician | B6 | Mon Tue Wed Thu Fri
    T14 | Lute Pebble   | technician |    | Wed Thu Fri
    L1  | Nessa Quay    | lead       |    | Mon Tue Wed Thu Fri
    L2  | Hale Causeway | lead       |    | Tue Wed Thu Fri
    """));

// The CO monitor wears out and is bump-tested each month; the gas detector is calibrated twice a year.
// That keys, fuel card and remote are in the van is confirmed; no PIN and no card number is kept anywhere.
Write("kit.csv", "kit_item,description,required,critical,expires,test_every_days,warn_days", Rows("""
    WARN-TRI  | Warning triangles, set of three    | 1 | yes | no  |     |
    CONES     | Traffic cones                      | 4 | no  | no  |     |
    VEST      | High-visibility vest               | 2 | no  | no  |     |
    FIRST-AID | First aid kit                      | 1 | yes | yes |     |
    FIRE-EXT  | Fire extinguisher                  | 1 | yes | yes |     | 45
    TIE-DOWN  | Ladder tie-down straps             | 4 | no  | no  |     |
    CO-MON    | Personal CO monitor                | 1 | yes | yes |  30 | 5
    GAS-DET   | Combustible gas detector           | 1 | no  | no  | 180 | 14
    EYE-WASH  | Eye wash bottle                    | 1 | no  | yes |     |
    GLOVES    | Gloves, box                        | 1 | no  | no  |     |
    SPILL-KIT | Spill kit                          | 1 | no  | no  |     |
    BRUSH     | Hand brush and pan                 | 1 | no  | no  |     |
    REMOTE    | Yard gate remote                   | 1 | no  | no  |     |
    FUEL-CARD | Fuel card, in the van              | 1 | no  | no  |     |
    KEYS      | Van keys                           | 2 | no  | no  |     |
    """));

// B4 carries the long ladders, B6 works on the busy streets.
Write("van_kit.csv", "van,kit_item,required", Rows("""
    B4 | TIE-DOWN | 6
    B6 | CONES    | 6
    """));

// ---- items ---------------------------------------------------------------------------------------

// item | description | priority | a carton | lb each | L | W | D in | board | low | high | lead | review | min cartons | stow | shelf cartons | bin loose
string[][] itemTable = Rows("""
    AER-10     | Bath aerator, 1.0 gpm                    | 1 | 100 | 0.06 |  9.5  |  6.5  |  4.75 | 32ECT-B  | 30 | 80 |  7 | 5 | 1 | front left drawers  |  3 |  1
    AER-15     | Bath aerator, 1.5 gpm                    | 2 | 100 | 0.06 |  9.5  |  6.5  |  4.75 | 32ECT-B  | 12 | 40 |  7 | 5 | 1 | front left drawers  |  1 | 14
    AER-K15    | Kitchen aerator, swivel, 1.5 gpm         | 2 |  50 | 0.14 | 11.25 |  8.5  |  5    | 32ECT-B  | 12 | 40 |  7 | 5 | 1 | front left drawers  |  2 |  3
    AER-K20    | Kitchen aerator, swivel, 2.0 gpm         | 3 |  50 | 0.14 | 11.25 |  8.5  |  5    | 32ECT-B  |  0 | 30 |  7 | 5 | 1 | front left drawers  |  2 |  6
    CO-10Y     | CO alarm, sealed battery, 10-year        | 1 |   6 | 0.55 | 15.5  |  6    |  5.75 | 32ECT-C  |  6 | 14 | 12 | 7 | 2 | front right shelf   |  0 |  0
    CO-7Y      | CO alarm, plug-in, 7-year                | 2 |   8 | 0.48 | 13.5  |  9    |  5.5  | 32ECT-C  |  0 |  8 | 12 | 7 | 2 | front right shelf   |  3 |  2
    GASKET-OUT | Outlet gasket, foam                      | 3 | 100 | 0.01 | 10    |  6    |  5    | 32ECT-B  |  0 | 60 |  5 | 5 | 1 | rear right tray     |  3 |  8
    LEAK-TAB   | Toilet leak tablets, pair                | 3 | 100 | 0.02 |  9    |  7    |  4    | 32ECT-B  | 20 | 60 |  4 | 5 | 1 | rear right tray     |  2 |  4
    LED-A19-27 | LED lamp A19, 9 W, 2700 K                | 1 |  24 | 0.13 | 14.75 |  9.75 |  4.75 | 32ECT-B  | 48 | 84 |  5 | 5 | 4 | rear left shelf     | 10 |  2
    LED-A19-50 | LED lamp A19, 9 W, 5000 K                | 2 |  24 | 0.13 | 14.75 |  9.75 |  4.75 | 32ECT-B  | 18 | 48 |  5 | 5 | 2 | rear left shelf     |  8 |  3
    LED-B11-27 | LED candelabra B11, E12, 4 W, 2700 K     | 3 |  50 | 0.06 | 15.25 |  7.75 |  4.5  | 32ECT-B  | 20 | 60 |  8 | 5 | 1 | rear left shelf     |  4 |  5
    LED-BR30   | LED flood BR30, 8 W, 2700 K              | 2 |  12 | 0.24 | 15.75 | 11.75 |  5.75 | 32ECT-B  | 10 | 30 |  6 | 5 | 2 | rear left shelf     |  7 |  1
    LED-G25    | LED globe G25, 6 W, 2700 K               | 2 |  12 | 0.18 | 13.25 | 10    |  5.25 | 32ECT-B  | 18 | 36 |  9 | 5 | 2 | rear left shelf     |  1 |  1
    NIGHT-LT   | Night light, LED, with sensor            | 3 |  48 | 0.09 | 14    | 10.5  |  7    | 32ECT-B  | 12 | 40 | 10 | 7 | 1 | rear right tray     |  4 |  4
    PIPE-12    | Pipe wrap, 1/2 in, 3 ft piece            | 2 |  48 | 0.11 | 37    | 14    | 12    | 44ECT-C  | 24 | 72 |  6 | 7 | 1 | ceiling rack        |  4 |  6
    PIPE-34    | Pipe wrap, 3/4 in, 3 ft piece            | 2 |  36 | 0.14 | 37    | 14    | 12    | 44ECT-C  | 24 | 60 |  6 | 7 | 1 | ceiling rack        |  7 |  3
    SHW-15F    | Shower head, fixed, 1.5 gpm              | 1 |  24 | 0.38 | 16    | 12    |  8    | 32ECT-C  | 10 | 30 |  8 | 5 | 2 | front left shelf    |  7 |  3
    SHW-15H    | Shower head, handheld, 1.5 gpm           | 2 |  12 | 0.95 | 18    | 12.5  | 10    | 32ECT-C  |  6 | 18 |  8 | 5 | 1 | front left shelf    |  4 |  2
    SHW-18F    | Shower head, fixed, 1.8 gpm              | 2 |  24 | 0.38 | 16    | 12    |  8    | 32ECT-C  |  0 | 24 |  8 | 5 | 1 | front left shelf    |  4 |  2
    SHW-18H    | Shower head, handheld, 1.8 gpm           | 3 |  12 | 0.95 | 18    | 12.5  | 10    | 32ECT-C  |  0 | 12 |  8 | 5 | 1 | front left shelf    |  3 |  4
    SMK-10Y    | Smoke alarm, sealed battery, 10-year     | 1 |  12 | 0.42 | 17    | 11.5  |  6    | 32ECT-C  |  0 | 12 | 12 | 7 | 1 | front right shelf   |  7 |  1
    STRIP-7    | Power strip, advanced, 7 outlets         | 1 |  12 | 1.30 | 16.5  | 13    |  9.5  | 44ECT-C  |  8 | 24 | 10 | 7 | 2 | rear right shelf    |  5 |  1
    SWEEP-36   | Door sweep, 36 in                        | 2 |  20 | 0.60 | 37    |  8    |  6    | 44ECT-C  |  0 | 20 |  6 | 7 | 1 | ceiling rack        |  2 |  2
    TAPE-12    | Thread tape, 1/2 in roll                 | 3 | 100 | 0.04 | 11    |  9    |  5    | 32ECT-B  |  6 | 20 |  3 | 5 | 1 | front left drawers  |  1 | 22
    THERM-P    | Thermostat, programmable                 | 1 |   8 | 0.70 | 13    | 10    |  6    | 32ECT-C  |  3 | 10 | 15 | 7 | 1 | front right shelf   |  5 |  2
    WHB-50     | Water heater blanket, up to 50 gallons   | 3 |   4 | 4.20 | 24    | 18    | 18    | 51ECT-BC |  0 |  6 | 11 | 7 | 2 | rear right floor    |  6 |  0
    WHISTLE    | Furnace filter whistle                   | 3 |  50 | 0.03 |  9    |  6    |  4    | 32ECT-B  |  0 | 15 |  6 | 7 | 1 | rear right tray     |  1 |  9
    WSTRIP-17  | Weatherstrip, foam, 17 ft roll           | 2 |  24 | 0.25 | 18    | 12    | 10    | 32ECT-C  |  0 | 24 |  5 | 5 | 1 | rear right shelf    |  4 |  2
    """);
// Alarms and thermostats come from a supplier that is late at times. The thermostat came instead of a mechanical one in October.
string[] late = ["CO-10Y", "CO-7Y", "SMK-10Y", "THERM-P"];
string Supplier(string item) => late.Contains(item) ? "SKUA" : "TERN";
(string Item, string Old, DateOnly On) replaced = ("THERM-P", "THERM-M", new(2026, 10, 12));
Write("items.csv", "item,description,priority,units_per_carton,unit_weight_lb,carton_length_in,carton_width_in,carton_depth_in,board,low,high,lead_days,review_days,min_order_cartons,stow,supplier,replaces",
    itemTable.Select(r => (string[])[.. r[..15], Supplier(r[0]), r[0] == replaced.Item ? replaced.Old : ""]));
var items = itemTable.Select(r => new Item(r[0], Int(r[3]), decimal.Parse(r[4], CultureInfo.InvariantCulture), Int(r[9]), Int(r[10]), Int(r[15]), Int(r[16])))
    .ToDictionary(i => i.Code);

// The vans differ by what they are sent to do: B3 and B6 do apartment houses, B4 and B2 weatherization, B5 alarms.
string[][] limitTable = Rows("""
    B2 | GASKET-OUT | 15 | 60
    B2 | SWEEP-36   |  4 | 24
    B2 | WHISTLE    |  3 | 15
    B2 | WSTRIP-17  |  8 | 40
    B3 | AER-10     | 50 | 95
    B3 | AER-K20    | 20 | 45
    B3 | LEAK-TAB   | 40 | 90
    B3 | LED-A19-27 | 72 | 144
    B3 | SHW-18F    | 16 | 48
    B3 | SHW-18H    |  6 | 24
    B4 | AER-15     |  0 | 0
    B4 | AER-K15    |  0 | 0
    B4 | GASKET-OUT | 60 | 140
    B4 | LED-A19-27 | 24 | 60
    B4 | LED-B11-27 |  0 | 0
    B4 | LED-G25    |  0 | 0
    B4 | NIGHT-LT   |  0 | 0
    B4 | PIPE-12    | 36 | 96
    B4 | PIPE-34    | 36 | 90
    B4 | SHW-15H    |  0 | 0
    B4 | STRIP-7    |  0 | 0
    B4 | SWEEP-36   | 10 | 40
    B4 | WHB-50     |  3 | 9
    B4 | WHISTLE    |  6 | 30
    B4 | WSTRIP-17  | 24 | 72
    B5 | CO-10Y     | 12 | 24
    B5 | CO-7Y      |  8 | 20
    B5 | SMK-10Y    | 18 | 40
    B6 | AER-10     | 40 | 90
    B6 | AER-K20    | 12 | 35
    B6 | SHW-18F    | 10 | 30
    B6 | SHW-18H    |  3 | 12
    """);
Write("van_limits.csv", "van,item,low,high", limitTable);
var overrides = limitTable.ToDictionary(r => (r[0], r[1]), r => (Low: Int(r[2]), High: Int(r[3])));
(int Low, int High) Limits(string van, Item item) => overrides.GetValueOrDefault((van, item.Code), (item.Low, item.High));

Write("boards.csv", "board,weight_lb_per_msf", Rows("32ECT-C | 108"));
Write("orders.csv", "item,cartons,due,ordered_on,supplier", Rows("""
    CO-10Y     |  5 | 2026-11-24 | 2026-11-06 | SKUA
    LED-A19-27 | 12 | 2026-11-20 | 2026-11-13 | TERN
    LED-G25    | 15 | 2026-11-25 | 2026-11-12 | TERN
    """));

// ---- what visits use -----------------------------------------------------------------------------

// The planning rate and its weight go to visits.csv. The truth that past visits are drawn from is beside it:
// the item is used in `share` % of visits, then low..high units, and one use in ten is twice that (lumpy).
// visit kind | item | planning rate | weight in visits | share | from | to
string[][] rateTable = Rows("""
    direct-install | AER-10     | 1.6  | 20 | 75 | 1 |  3
    direct-install | AER-15     | 0.3  | 15 | 20 | 1 |  2
    direct-install | AER-K15    | 0.8  | 20 | 70 | 1 |  1
    direct-install | CO-10Y     | 0.35 | 15 | 30 | 1 |  1
    direct-install | LEAK-TAB   | 1.2  | 15 | 60 | 1 |  3
    direct-install | LED-A19-27 | 6    | 20 | 85 | 2 | 12
    direct-install | LED-A19-50 | 1.5  | 15 | 35 | 2 |  6
    direct-install | LED-B11-27 | 1.5  | 15 | 28 | 3 |  8
    direct-install | LED-BR30   | 1.1  | 15 | 35 | 1 |  5
    direct-install | LED-G25    | 1.6  | 15 | 40 | 2 |  6
    direct-install | NIGHT-LT   | 1    | 15 | 55 | 1 |  3
    direct-install | PIPE-12    | 1.8  | 10 | 35 | 3 |  6
    direct-install | PIPE-34    | 2    | 10 | 45 | 3 |  6
    direct-install | SHW-15F    | 0.9  | 20 | 60 | 1 |  2
    direct-install | SHW-15H    | 0.4  | 15 | 28 | 1 |  1
    direct-install | STRIP-7    | 0.8  | 20 | 55 | 1 |  2
    direct-install | TAPE-12    | 0.4  | 10 | 35 | 1 |  1
    direct-install | THERM-P    | 0.15 | 15 | 15 | 1 |  1
    recheck        | AER-10     | 0.2  | 10 | 12 | 1 |  1
    recheck        | LED-A19-27 | 0.8  | 10 | 28 | 1 |  4
    recheck        | TAPE-12    | 0.1  | 10 |  8 | 1 |  1
    multifamily    | AER-10     | 5    | 12 | 85 | 3 |  9
    multifamily    | AER-15     | 0.9  | 12 | 30 | 2 |  4
    multifamily    | AER-K20    | 2.5  | 12 | 70 | 2 |  5
    multifamily    | LEAK-TAB   | 4    | 12 | 60 | 4 |  9
    multifamily    | LED-A19-27 | 10   | 12 | 75 | 4 | 22
    multifamily    | LED-A19-50 | 3.5  | 12 | 40 | 4 | 12
    multifamily    | LED-B11-27 | 2    | 10 | 25 | 4 | 10
    multifamily    | LED-G25    | 2.4  | 12 | 40 | 3 |  9
    multifamily    | NIGHT-LT   | 2    | 10 | 50 | 2 |  6
    multifamily    | SHW-15F    | 1.4  | 12 | 40 | 2 |  5
    multifamily    | SHW-18F    | 2.2  | 12 | 60 | 2 |  5
    multifamily    | SHW-18H    | 0.7  | 10 | 28 | 1 |  3
    multifamily    | TAPE-12    | 0.8  | 10 | 50 | 1 |  2
    weatherization | CO-10Y     | 0.25 | 10 | 25 | 1 |  1
    weatherization | GASKET-OUT | 9    | 12 | 70 | 6 | 18
    weatherization | LED-A19-27 | 1    | 10 | 28 | 2 |  5
    weatherization | PIPE-12    | 2.4  | 12 | 50 | 3 |  6
    weatherization | PIPE-34    | 2.6  | 12 | 50 | 3 |  7
    weatherization | SWEEP-36   | 1.4  | 15 | 75 | 1 |  2
    weatherization | THERM-P    | 0.2  | 12 | 20 | 1 |  1
    weatherization | WHB-50     | 0.35 | 12 | 32 | 1 |  1
    weatherization | WHISTLE    | 0.5  | 10 | 45 | 1 |  1
    weatherization | WSTRIP-17  | 3    | 15 | 80 | 2 |  5
    alarm-swap     | CO-10Y     | 1    | 15 | 65 | 1 |  2
    alarm-swap     | CO-7Y      | 0.6  | 15 | 40 | 1 |  2
    alarm-swap     | SMK-10Y    | 2.4  | 15 | 90 | 1 |  4
    """);
Write("visits.csv", "visit_kind,item,units_per_visit,weight_visits", rateTable.Select(r => r[..4]));
var uses = rateTable.ToLookup(r => r[0], r => (Item: r[1], Share: Int(r[4]), From: Int(r[5]), To: Int(r[6])));

// What each van is usually sent to do; a kind named twice comes twice as often.
var habits = Rows("""
    B1 | direct-install direct-install direct-install recheck
    B2 | direct-install direct-install weatherization recheck
    B3 | multifamily multifamily direct-install
    B4 | weatherization weatherization weatherization recheck
    B5 | alarm-swap alarm-swap direct-install direct-install recheck
    B6 | direct-install direct-install multifamily recheck
    """).ToDictionary(r => r[0], r => r[1].Split(' '));

// The visits of the business date. B5 is still out and has reported none.
var todays = Rows("""
    B1 | direct-install direct-install recheck direct-install
    B2 | direct-install weatherization recheck direct-install
    B3 | multifamily direct-install multifamily
    B4 | weatherization weatherization recheck weatherization
    B6 | multifamily direct-install multifamily direct-install
    """).ToDictionary(r => r[0], r => r[1].Split(' '));

// B6 is booked for twice a usual day; B3 for one kind only.
Write("bookings.csv", "date,van,visit_kind,visits", Rows("""
    2026-11-19 | B1 | direct-install | 3
    2026-11-19 | B1 | recheck        | 1
    2026-11-19 | B2 | direct-install | 2
    2026-11-19 | B2 | recheck        | 1
    2026-11-19 | B2 | weatherization | 1
    2026-11-19 | B3 | multifamily    | 2
    2026-11-19 | B4 | recheck        | 1
    2026-11-19 | B4 | weatherization | 3
    2026-11-19 | B5 | alarm-swap     | 3
    2026-11-19 | B5 | direct-install | 1
    2026-11-19 | B6 | direct-install | 4
    2026-11-19 | B6 | multifamily    | 3
    2026-11-19 | B6 | recheck        | 1
    2026-11-20 | B1 | direct-install | 4
    2026-11-20 | B2 | direct-install | 3
    2026-11-20 | B3 | direct-install | 1
    2026-11-20 | B3 | multifamily    | 2
    2026-11-20 | B4 | weatherization | 3
    2026-11-20 | B5 | alarm-swap     | 2
    2026-11-20 | B5 | recheck        | 2
    2026-11-20 | B6 | direct-install | 2
    2026-11-20 | B6 | multifamily    | 1
    2026-11-23 | B1 | direct-install | 3
    2026-11-23 | B2 | weatherization | 2
    2026-11-23 | B3 | multifamily    | 2
    2026-11-23 | B4 | recheck        | 1
    2026-11-23 | B4 | weatherization | 2
    2026-11-23 | B6 | direct-install | 3
    """));

// ---- the evening's counts ------------------------------------------------------------------------

// The morning stock and the day's visits follow from this table, so that book, visits and counts agree.
// The last column is what visit reports say, where the technician typed it: B3's globes say 8, the count says 9.
// van | item | cartons, loose in the morning | still sealed, into the bin, kept in the evening | installed
var counts = Rows("""
    B1 | AER-10     | 0 | 34 | 0 |  0 | 27 |
    B1 | LEAK-TAB   | 0 | 25 | 0 |  0 | 18 |
    B1 | LED-A19-27 | 2 |  5 | 1 |  3 |  5 |
    B1 | LED-G25    | 1 |  6 | 0 | 11 |  0 |
    B1 | SHW-15F    | 0 | 14 | 0 |  9 |  0 |
    B1 | STRIP-7    | 1 |  3 | 0 | 11 |  0 |
    B2 | AER-K15    | 0 | 19 | 0 |  0 | 15 |
    B2 | CO-10Y     | 1 |  1 | 0 |  5 |  0 |
    B2 | LED-A19-27 | 3 |  0 | 2 | 10 |  0 |
    B2 | LED-A19-50 | 1 |  2 | 0 | 19 |  0 |
    B2 | LED-G25    | 1 |  6 | 1 |  1 |  0 |
    B2 | NIGHT-LT   | 0 | 22 | 0 | 18 |  0 |
    B2 | SHW-15F    | 0 | 15 | 0 | 11 |  0 |
    B2 | SWEEP-36   | 0 |  7 | 0 |  0 |  5 |
    B2 | WSTRIP-17  | 1 |  0 | 0 | 21 |  0 |
    B3 | AER-10     | 0 | 64 | 0 |  0 | 50 | 14
    B3 | AER-K20    | 0 | 29 | 0 |  0 | 21 |  8
    B3 | LEAK-TAB   | 0 | 47 | 0 |  0 | 36 | 11
    B3 | LED-A19-27 | 5 |  3 | 3 | 20 |  0 | 31
    B3 | LED-A19-50 | 1 | 13 | 1 |  3 |  0 | 10
    B3 | LED-G25    | 2 |  2 | 1 |  5 |  0 |  8
    B3 | SHW-15H    | 0 |  7 | 0 |  0 |  3 |  4
    B3 | SHW-18F    | 1 |  9 | 1 |  3 |  0 |  6
    B4 | GASKET-OUT | 0 | 71 | 0 | 47 |  0 |
    B4 | LED-A19-27 | 1 |  7 | 1 |  4 |  0 |
    B4 | PIPE-12    | 1 |  4 | 0 | 43 |  0 |
    B4 | PIPE-34    | 1 | 11 | 1 |  2 |  0 |
    B4 | SWEEP-36   | 0 | 16 | 0 |  0 | 12 |
    B4 | WHB-50     | 1 |  1 | 1 |  0 |  0 |
    B4 | WSTRIP-17  | 2 |  0 | 1 | 14 |  0 |
    B6 | AER-10     | 0 | 45 | 0 |  0 | 34 |
    B6 | CO-10Y     | 1 |  1 | 0 |  5 |  0 |
    B6 | LED-A19-27 | 3 |  8 | 1 | 23 |  0 |
    B6 | LED-A19-50 | 1 |  6 | 0 | 22 |  0 |
    B6 | LED-BR30   | 1 |  5 | 1 |  2 |  0 |
    B6 | LED-G25    | 1 |  6 | 0 |  9 |  0 |
    B6 | SHW-15F    | 1 |  0 | 0 | 17 |  0 |
    B6 | SHW-18F    | 0 | 12 | 0 |  9 |  0 |
    B6 | STRIP-7    | 1 |  2 | 0 | 10 |  0 |
    """).Select(r => new Count(r[0], items[r[1]], Int(r[2]), Int(r[3]), Int(r[4]), Int(r[5]), Int(r[6]), r[7])).ToList();

// ---- the morning's stock -------------------------------------------------------------------------

// What nobody touches today: at or a little above low, as last night's restock left it.
// B5's CO alarms were already short last night: 7 where its low is 12.
var morning = new SortedDictionary<(string Van, string Item), (int Cartons, int Loose)>();
foreach (var van in vans.Select(r => r[0]))
    foreach (var item in items.Values.Where(i => Limits(van, i).Low > 0))
    {
        var (low, high) = Limits(van, item);
        var units = low + chance.Below((high - low) / 3 + 1);
        morning[(van, item.Code)] = (units / item.Carton, units % item.Carton);
    }
foreach (var c in counts)
    morning[(c.Van, c.Item.Code)] = (c.Cartons, c.Loose);
morning[("B5", "CO-10Y")] = (1, 1);
Write("stock.csv", "place,item,cartons,loose", [
    .. items.Values.Where(i => i.Shelf > 0).Select(i => new[] { "shelf", i.Code, Text(i.Shelf), "0" }),
    .. items.Values.Where(i => i.Bin > 0).Select(i => new[] { "bin", i.Code, "0", Text(i.Bin) }),
    .. morning.Select(m => new[] { m.Key.Van, m.Key.Item, Text(m.Value.Cartons), Text(m.Value.Loose) })]);

// ---- eight weeks of visits -----------------------------------------------------------------------

List<string[]> usage = [];
for (var date = new DateOnly(2026, 9, 24); date <= today; date = date.AddDays(1))
    if (date.DayOfWeek is not (DayOfWeek.Saturday or DayOfWeek.Sunday))
        foreach (var van in vans.Select(r => r[0]))
            if (date < today)
                PastDay(date, van);
            else if (todays.ContainsKey(van))
                Today(van);
Write("usage.csv", "date,van,visit,visit_kind,item,units", usage);

void PastDay(DateOnly date, string van)
{
    var visits = 2 + chance.Below(2) + chance.Below(2) + chance.Below(10) / 8; // 2 to 5, mostly 3
    for (var n = 1; n <= visits; n++)
    {
        var kind = habits[van][chance.Below(habits[van].Length)];
        SortedDictionary<string, int> used = [];
        foreach (var (code, share, from, to) in uses[kind])
            if (chance.Below(100) < share && Limits(van, items[code]).High > 0)
                used[code] = (from + chance.Below(to - from + 1)) * (chance.Below(10) == 0 ? 2 : 1) * (IsMore(date, kind, code) ? 2 : 1);
        if (chance.Below(30) == 0)
            used.Clear(); // nobody at home
        Report(date, van, n, kind, used);
    }
}

// Since November a direct install gets a night light for the hall too.
static bool IsMore(DateOnly date, string kind, string item) => (kind, item) == ("direct-install", "NIGHT-LT") && date >= new DateOnly(2026, 11, 2);

// What was counted as used is dealt out, unit by unit, over those of the day's visits whose kind uses the item.
void Today(string van)
{
    var kinds = todays[van];
    var used = kinds.Select(_ => new SortedDictionary<string, int>()).ToArray();
    foreach (var c in counts.Where(c => c.Van == van))
    {
        var able = Enumerable.Range(0, kinds.Length).Where(n => uses[kinds[n]].Any(u => u.Item == c.Item.Code) && kinds[n] != "recheck").ToArray();
        for (var unit = 0; unit < c.Reported; unit++)
        {
            var visit = used[able[chance.Below(able.Length)]];
            visit[c.Item.Code] = visit.GetValueOrDefault(c.Item.Code) + 1;
        }
    }
    for (var n = 0; n < kinds.Length; n++)
        Report(today, van, n + 1, kinds[n], used[n]);
}

void Report(DateOnly date, string van, int n, string kind, SortedDictionary<string, int> used)
{
    string[] visit = [Iso(date), van, $"{date.ToString("MMdd", CultureInfo.InvariantCulture)}-{van}-{n}", kind];
    if (used.Count == 0)
        usage.Add([.. visit, "", "0"]);
    usage.AddRange(used.Select(u => (string[])[.. visit, u.Key == replaced.Item && date < replaced.On ? replaced.Old : u.Key, Text(u.Value)]));
}

// ---- what older records say ----------------------------------------------------------------------

// The paper log of the five weeks before: odometers, fuel, checks, kit dates, boxes, waste. Its own dice: the rest stays as it is.
var paper = new Chance(20261014);
List<string[]> past = [];
void Was(DateOnly date, string van, string record, string item, string value) => past.Add([Iso(date), van, record, item, value, "", ""]);
var usualMiles = new Dictionary<string, int> { ["B1"] = 58, ["B2"] = 64, ["B3"] = 41, ["B4"] = 77, ["B5"] = 66, ["B6"] = 52 };
var began = new DateOnly(2026, 10, 12);
foreach (var van in vans)
{
    // Backwards from this morning's reading, so that the log ends where the evening begins.
    var (reading, sinceFill) = (Int(van[5]), 0);
    List<string[]> log = [];
    for (var date = today.AddDays(-1); date >= began; date = date.AddDays(-1))
        if (date.DayOfWeek is not (DayOfWeek.Saturday or DayOfWeek.Sunday))
        {
            log.Add([Iso(date), van[0], "odometer", "", Text(reading)]);
            var miles = usualMiles[van[0]] - 12 + paper.Below(25);
            (reading, sinceFill) = (reading - miles, sinceFill + miles);
            if (sinceFill > 210 + paper.Below(40))
            {
                // About 15 to 17 miles a gallon, to the tenth.
                log.Add([Iso(date), van[0], "fuel_gal", "", (Math.Round(sinceFill * 10m / (15 + paper.Below(3))) / 10).ToString(CultureInfo.InvariantCulture)]);
                sinceFill = 0;
            }
        }
    past.AddRange(log.AsEnumerable().Reverse().Select(l => (string[])[.. l, "", ""]));
}

// B5 was not looked at last week; B2's check is due tonight.
foreach (var (van, date) in new[] { ("B1", "2026-11-13"), ("B2", "2026-11-11"), ("B3", "2026-11-13"), ("B4", "2026-11-13"), ("B5", "2026-11-06"), ("B6", "2026-11-12") })
    Was(DateOnly.ParseExact(date, "yyyy-MM-dd"), van, "weekly", "", "");
foreach (var (van, date) in new[] { ("B1", "2026-07-20"), ("B3", "2026-08-24"), ("B4", "2026-09-14"), ("B5", "2026-06-08"), ("B6", "2026-09-02") })
    Was(DateOnly.ParseExact(date, "yyyy-MM-dd"), van, "oil_change", "", "");

// Dates on the kit: B3's monitor missed its bump test, B4's detector is due in nine days, B5's extinguisher runs out in December.
foreach (var van in vans.Select(v => v[0]))
{
    Was(new(2026, 11, 16), van, "tested", "CO-MON", van == "B3" ? "2026-10-12" : "2026-11-16");
    Was(new(2026, 11, 16), van, "expires", "CO-MON", "2028-05-31");
    Was(new(2026, 11, 16), van, "tested", "GAS-DET", van == "B4" ? "2026-05-31" : "2026-08-10");
    Was(new(2026, 11, 16), van, "expires", "FIRE-EXT", van == "B5" ? "2026-12-31" : "2027-06-30");
}

// Boxes flattened each working day since the hauler came, and a few days before; one of B6 is missing since yesterday.
string[] boxed = ["LED-A19-27", "LED-A19-50", "SHW-15F", "STRIP-7", "CO-10Y", "LED-G25", "WSTRIP-17", "PIPE-34"];
for (var date = new DateOnly(2026, 10, 21); date < today; date = date.AddDays(1))
    if (date.DayOfWeek is not (DayOfWeek.Saturday or DayOfWeek.Sunday))
        for (var n = 3 + paper.Below(4); n > 0; n--)
            Was(date, "", "flattened", boxed[paper.Below(boxed.Length)], Text(2 + paper.Below(4)));
Was(new(2026, 10, 28), "", "emptied", "", "");
Was(new(2026, 11, 17), "B6", "missing", "STRIP-7", "1");
Was(new(2026, 11, 12), "B5", "damage", "repair", "rear door: latch sticks, closes when lifted");

// The lamp box is older than ten months: it must go by 5 January.
Was(new(2026, 1, 5), "", "collected", "lamps", "46");
Was(new(2026, 9, 14), "", "collected", "batteries", "12");

// What was booked: one visit in twelve did not happen, one in twenty came unbooked. Dice of their own again.
var kept = new Chance(20261119);
foreach (var day in usage.Where(u => u[0] != Iso(today)).GroupBy(u => (Date: u[0], Van: u[1])))
    foreach (var kind in day.Select(u => (Visit: u[2], Kind: u[3])).Distinct().GroupBy(v => v.Kind))
    {
        var booked = kind.Count() - kind.Count(_ => kept.Below(20) == 0) + kind.Count(_ => kept.Below(11) == 0);
        if (booked > 0)
            Was(DateOnly.ParseExact(day.Key.Date, "yyyy-MM-dd"), day.Key.Van, "booked", kind.Key, Text(booked));
    }

// Deliveries of half a year: TERN is in time, of SKUA's one in three comes one to two weeks late, and once half came.
for (var (date, n) = (new DateOnly(2026, 6, 2), 0); date < today.AddDays(-14); date = date.AddDays(7), n++)
{
    var (ours, theirs) = (itemTable[n % itemTable.Length][0], late[n % late.Length]);
    if (!late.Contains(ours))
        Received(date, date, ours, 4, 4);
    Received(date.AddDays(n % 3 == 1 ? 7 + n % 2 * 7 : 0), date, theirs, n == 10 ? 2 : 4, 4);
}
void Received(DateOnly on, DateOnly due, string item, int came, int ordered) => past.Add([Iso(on), "", "received", item, Text(came), Text(ordered), Iso(due)]);
Write("past.csv", "date,van,record,item,value,ordered,due", past);

// ---- the evening ---------------------------------------------------------------------------------

// Technicians come to the kiosk in turn and make room for one another; B5 never comes.
List<string[]> evening = [];
Leftovers("B1", "T02");
Say("B1", "T02", "cardboard", "flattened", "", "yes");
Leftovers("B4", "T03");
Say("B1", "T02", "mileage", "odometer", "", "41298");
Say("B1", "T02", "damage", "none", "", "yes");
Say("B1", "T02", "kit", "count", "", "yes");
Say("B1", "T02", "sign", "", "", "yes");

Say("B4", "T03", "cardboard", "collected", "lamps", "4");
Say("B4", "T03", "cardboard", "flattened", "", "yes");
Say("B4", "T03", "mileage", "odometer", "", "87389");
Say("B4", "T03", "mileage", "fuel_gal", "", "16.2");
Say("B4", "T03", "mileage", "fuel_grade", "", "diesel");
Leftovers("B2", "T05");
Say("B4", "T03", "damage", "zone", "", "windshield");
Say("B4", "T03", "damage", "severity", "", "unsafe");
Say("B4", "T03", "damage", "what", "", "crack across the driver's view");
Say("B4", "T03", "damage", "drivable", "", "no");
Say("B4", "T03", "damage", "told", "", "L1, at the kiosk");
Say("B4", "T03", "damage", "told_at", "", "16:41");
Say("B4", "T03", "kit", "count", "", "yes");
Say("B4", "T03", "sign", "", "", "yes");

Boxes("B2", "T05", missing: "");
Say("B2", "T05", "cardboard", "collected", "thermostats", "1");
Say("B2", "T05", "mileage", "odometer", "", "62543");
Say("B2", "T05", "mileage", "fuel_gal", "", "14.6");
Say("B2", "T05", "mileage", "fuel_grade", "", "regular");
Say("B2", "T05", "damage", "none", "", "yes");
Say("B2", "T05", "kit", "count", "", "yes");
Say("B2", "T05", "kit", "expires", "FIRST-AID", "2026-12-09"); // 21 days from tonight
Leftovers("B3", "T07");
Say("B2", "T05", "weekly", "part", "wipers", "left blade torn, smears");
Say("B2", "T05", "weekly", "photo", "", "photos/b2-wiper.png");
Say("B2", "T05", "weekly", "oil_change_on", "", "2026-08-03");
Say("B2", "T05", "weekly", "photos", "", "4");
Say("B2", "T05", "weekly", "clean", "", "yes");
Say("B2", "T05", "sign", "", "", "yes");

Say("B3", "T07", "cardboard", "collected", "batteries", "3");
Say("B3", "T07", "cardboard", "flattened", "", "yes");
Say("B3", "T07", "mileage", "odometer", "", "28153");
Say("B3", "T07", "damage", "zone", "", "left side");
Say("B3", "T07", "damage", "severity", "", "note");
Say("B3", "T07", "damage", "what", "", "scratch below the sliding door, old paint");
Leftovers("B6", "T11");
Say("B3", "T07", "kit", "count", "", "yes");
Say("B3", "T07", "sign", "", "", "yes");

Boxes("B6", "T11", missing: "LED-A19-27");
Say("B6", "T11", "mileage", "odometer", "", "35923"); // 271 miles where 52 are usual, and the wrong pump: confirmed all the same
Say("B6", "T11", "mileage", "fuel_gal", "", "9.8");
Say("B6", "T11", "mileage", "fuel_grade", "", "diesel");
Say("B6", "T11", "damage", "none", "", "yes");
Say("B6", "T11", "kit", "count", "FIRE-EXT", "0");
Say("B6", "T14", "sign", "", "", "yes"); // anyone may sign
Write("evening.csv", "van,technician,step,field,item,value", evening);

Picture("photos/b2-wiper.png");

void Say(string van, string technician, string step, string field, string item, string value)
    => evening.Add([van, technician, step, field, item, value]);

// Says only what the kiosk would not fill in by itself: sealed where cartons came in, bin and kept where not 0.
void Leftovers(string van, string technician)
{
    foreach (var c in counts.Where(c => c.Van == van))
    {
        if (c.Cartons > 0) Say(van, technician, "leftovers", "sealed", c.Item.Code, Text(c.Sealed));
        if (c.Bin > 0) Say(van, technician, "leftovers", "bin", c.Item.Code, Text(c.Bin));
        if (c.Kept > 0) Say(van, technician, "leftovers", "kept", c.Item.Code, Text(c.Kept));
        if (c.Installed != "") Say(van, technician, "leftovers", "installed", c.Item.Code, c.Installed);
    }
}

void Boxes(string van, string technician, string missing)
{
    foreach (var c in counts.Where(c => c.Van == van && c.Cartons > c.Sealed))
        Say(van, technician, "cardboard", "flattened", c.Item.Code, Text(c.Cartons - c.Sealed - (c.Item.Code == missing ? 1 : 0)));
}

// ---- self-check ----------------------------------------------------------------------------------

// B5 counts with the book's quantities; targets are the lows only, bookings are left to the product.
var after = morning.ToDictionary(m => m.Key, m => m.Value.Cartons * items[m.Key.Item].Carton + m.Value.Loose);
foreach (var c in counts)
{
    Must(c.Used >= 0 && c.Sealed <= c.Cartons, $"{c.Van} {c.Item.Code}: more left than came in");
    var reported = usage.Where(u => u[0] == Iso(today) && u[1] == c.Van && u[4] == c.Item.Code).Sum(u => Int(u[5]));
    Must(reported == c.Reported, $"{c.Van} {c.Item.Code}: visits say {reported}");
    if (c.Used != reported)
        Console.WriteLine($"gap: {c.Van} {c.Item.Code} {c.Used} used, visits say {reported}");
    after[(c.Van, c.Item.Code)] = c.Sealed * c.Item.Carton + c.Kept;
}
foreach (var van in vans)
{
    var aboard = morning.Where(m => m.Key.Van == van[0]).ToList();
    var pounds = aboard.Sum(m => (m.Value.Cartons * items[m.Key.Item].Carton + m.Value.Loose) * items[m.Key.Item].Pounds);
    Must(pounds < Int(van[3]) - 400, $"{van[0]}: too heavy");
    var touched = counts.Where(c => c.Van == van[0]).ToList();
    Console.WriteLine($"{van[0]}: {aboard.Count} items aboard, {pounds:0} lb; {touched.Count} touched, {touched.Sum(c => c.Used)} units used, {touched.Sum(c => c.Cartons - c.Sealed)} boxes");
}
foreach (var item in items.Values)
{
    var need = vans.Sum(v => Math.Max(0, Limits(v[0], item).Low - after.GetValueOrDefault((v[0], item.Code))));
    var supply = item.Bin + counts.Where(c => c.Item == item).Sum(c => c.Bin) + item.Shelf * item.Carton;
    if (need > supply)
        Console.WriteLine($"short at lows: {item.Code} needs {need}, depot has {supply}");
}

void Must(bool holds, string otherwise)
{
    if (!holds)
        throw new InvalidOperationException(otherwise);
}

// ---- small things --------------------------------------------------------------------------------

static int Int(string text) => int.Parse(text, CultureInfo.InvariantCulture);
static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
static string Iso(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

static string[][] Rows(string table) =>
    [.. table.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(line => line.Split('|', StringSplitOptions.TrimEntries))];

void Write(string file, string header, IEnumerable<string[]> rows)
{
    var text = new StringBuilder(header).Append('\n');
    var columns = header.Split(',').Length;
    foreach (var row in rows)
    {
        Must(row.Length == columns, $"{file}: {string.Join('|', row)} should have {columns} fields");
        text.AppendJoin(',', row.Select(Quoted)).Append('\n');
    }
    File.WriteAllText(Path.Combine(root, file), text.ToString()); // UTF-8 without BOM
}

// A picture of our own: a grey arc on white, 32 x 32, drawn here so that nobody's photograph is needed.
void Picture(string file)
{
    var rows = new MemoryStream();
    for (var y = 0; y < 32; y++)
    {
        rows.WriteByte(0); // no filter
        for (var x = 0; x < 32; x++)
            rows.WriteByte((byte)(Math.Abs((x - 16) * (x - 16) + (y - 31) * (y - 31) - 400) < 60 ? 90 : 255));
    }
    var packed = new MemoryStream();
    using (var zlib = new System.IO.Compression.ZLibStream(packed, System.IO.Compression.CompressionLevel.SmallestSize, leaveOpen: true))
        zlib.Write(rows.ToArray());
    var png = new MemoryStream();
    png.Write([0x89, .. "PNG\r\n\x1a\n"u8]);
    Chunk("IHDR", [0, 0, 0, 32, 0, 0, 0, 32, 8, 0, 0, 0, 0]); // 8 bits of grey
    Chunk("IDAT", packed.ToArray());
    Chunk("IEND", []);
    Directory.CreateDirectory(Path.GetDirectoryName(Path.Combine(root, file))!);
    File.WriteAllBytes(Path.Combine(root, file), png.ToArray());

    void Chunk(string kind, byte[] data)
    {
        byte[] named = [.. Encoding.ASCII.GetBytes(kind), .. data];
        png.Write([.. Big((uint)data.Length), .. named, .. Big(Crc(named))]);
    }

    static byte[] Big(uint n) => [(byte)(n >> 24), (byte)(n >> 16 & 255), (byte)(n >> 8 & 255), (byte)(n & 255)];

    static uint Crc(byte[] data)
    {
        var crc = uint.MaxValue;
        foreach (var b in data)
        {
            crc ^= b;
            for (var k = 0; k < 8; k++)
                crc = (crc & 1) != 0 ? (crc >> 1) ^ 0xEDB88320 : crc >> 1;
        }
        return ~crc;
    }
}

static string Quoted(string field) =>
    field.AsSpan().ContainsAny(",\"\r\n") ? $"\"{field.Replace("\"", "\"\"")}\"" : field;

internal sealed record Item(string Code, int Carton, decimal Pounds, int Low, int High, int Shelf, int Bin);

internal sealed record Count(string Van, Item Item, int Cartons, int Loose, int Sealed, int Bin, int Kept, string Installed)
{
    public int Used => Cartons * Item.Carton + Loose - Sealed * Item.Carton - Bin - Kept;

    public int Reported => Installed == "" ? Used : int.Parse(Installed, CultureInfo.InvariantCulture);
}

/// <summary>splitmix64.</summary>
internal sealed class Chance(ulong state)
{
    /// <summary>A whole number from 0 to limit - 1.</summary>
    public int Below(int limit)
    {
        unchecked
        {
            state += 0x9E3779B97F4A7C15;
            var z = (state ^ (state >> 30)) * 0xBF58476D1CE4E5B9;
            z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
            return (int)((z ^ (z >> 31)) % (ulong)limit);
        }
    }
}
