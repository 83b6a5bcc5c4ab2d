using System.Text;
using Closeout.Files;
using Closeout.Screens.Steps;
using Closeout.Turning;

namespace Closeout.Tests;

/// <summary>A day folder small enough to reckon with: two vans, two items, Wednesday 4 March 2026. B2 is due for its weekly check, B1 is not.</summary>
internal static class SmallDay
{
    public const string EveningHeader = "van,technician,step,field,item,value\n";

    public static readonly DateOnly Date = new(2026, 3, 4);

    private static readonly Dictionary<string, string> Files = new()
    {
        ["depot.csv"] = "setting,value\ndepot,Small Row\nbusiness_date,2026-03-04\nshift_end,16:30\nunits,us\nservice_1,0.98\nservice_2,0.95\nservice_3,0.90\ncontainer_cu_yd,8\ncontainer_full_percent,85\n",
        ["items.csv"] =
            "item,description,priority,units_per_carton,unit_weight_lb,carton_length_in,carton_width_in,carton_depth_in,board,low,high,lead_days,review_days,min_order_cartons\n"
            + "LAMP,Lamp,1,10,0.1,12,8,4,32ECT-C,20,40,5,5,1\n"
            + "HEAD,Shower head,2,4,0.5,10,10,5,32ECT-B,2,8,5,5,1\n",
        ["vans.csv"] =
            "van,bay,name,payload_lb,fuel,odometer_mi,service_every_mi,service_every_months,last_service_mi,last_service_on\n"
            + "B1,1,Knot,1500,regular,1000,5000,6,500,2026-01-10\n"
            + "B2,2,Ruff,1500,diesel,2000,5000,6,500,2026-01-10\n",
        ["kit.csv"] = "kit_item,description,required,critical,expires\nCONES,Cones,4,no,no\nFIRE,Fire extinguisher,1,yes,yes\n",
        ["crew.csv"] =
            "technician,name,role,van,workdays\n"
            + "T1,Ada Dune,technician,B1,Mon Tue Wed Thu Fri\nT2,Bo Reed,technician,B2,Mon Tue Wed\nL1,Cy Moor,lead,,Mon Tue Wed Thu Fri\n",
        ["visits.csv"] = "visit_kind,item,units_per_visit,weight_visits\ninstall,LAMP,6,10\n",
        ["stock.csv"] = "place,item,cartons,loose\nshelf,LAMP,5,0\nbin,LAMP,0,7\nB1,LAMP,2,3\nB1,HEAD,1,0\nB2,LAMP,1,4\n",
    };

    /// <summary>Writes the folder; each file named in <paramref name="instead"/> is replaced, or left out where its text is null.</summary>
    public static string Write(string folder, params (string File, string? Text)[] instead)
    {
        Directory.CreateDirectory(folder);
        var files = Files.ToDictionary(f => f.Key, f => (string?)f.Value);
        foreach (var (file, text) in instead)
        {
            files[file] = text;
        }

        foreach (var (file, text) in files.Where(f => f.Value is not null))
        {
            File.WriteAllText(Path.Combine(folder, file), text, new UTF8Encoding(false));
        }

        return folder;
    }

    public static string Text(string file) => Files[file];

    /// <summary>The evening's file of these rows.</summary>
    public static (string File, string? Text) Evening(params string[] rows) => ("evening.csv", EveningHeader + string.Concat(rows.Select(r => r + "\n")));

    /// <summary>The small day as the book takes it.</summary>
    public static DayGiven Given(params (string File, string? Text)[] instead)
    {
        using var folder = new TempFolder();
        var read = DayFolder.Read(Write(folder["day"], instead), StepPages.Evening);
        return read.Given ?? throw new InvalidOperationException(string.Join("\n", read.Findings.Problems));
    }
}
