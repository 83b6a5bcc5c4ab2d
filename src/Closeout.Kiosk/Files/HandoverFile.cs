namespace Closeout.Files;

/// <summary>handover.csv: the depot's own yes/no questions before the signature.</summary>
public static class HandoverFile
{
    /// <summary>More would not be read at the end of a day.</summary>
    private const int Most = 6;

    /// <returns>The questions in their order, and what evening.csv may answer.</returns>
    public static (IReadOnlyList<HandoverQuestion> Questions, IReadOnlyList<EveningField> Fields) Read(string folder, Findings findings)
    {
        var table = CsvTable.Read(folder, "handover.csv", required: false, ["code", "question"], [], findings);
        var questions = new List<HandoverQuestion>();
        foreach (var row in table.Rows)
        {
            var question = new HandoverQuestion(row.Code<HandoverQuestion>("code"), row.Text("question"));
            if (questions.Any(q => q.Code == question.Code))
                row.Bad("code", T("stands twice"), T("once, whatever the case of its letters"));

            if (questions.Count == Most)
                row.Fault("code", T($"has too many questions: found more than {Most}, allowed {Most}"));

            if (row.IsGood)
                questions.Add(question);
        }

        return (questions, [.. questions.Select(q => new EveningField(q.Code.Text, EveningItem.None, row => row.YesNo("value")))]);
    }
}
