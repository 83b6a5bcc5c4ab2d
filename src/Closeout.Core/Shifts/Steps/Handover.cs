namespace Closeout.Shifts.Steps;

/// <summary>One of the depot's own questions answered.</summary>
/// <param name="Why">What is not as it should be; nothing is asked where the answer is yes.</param>
public sealed record HandoverReply(Code<HandoverQuestion> Code, bool Yes, string Why = "");

/// <summary>Answer the depot's own questions before the signature.</summary>
/// <param name="Replies">One for each question; none at all: nobody was asked, and the morning is told so.</param>
public sealed record AnswerHandover(Code<Van> Van, IReadOnlyList<HandoverReply> Replies) : CloseoutCommand(Van)
{
    public override Step? Step => DayBook.Step.Handover;

    protected override Decision Decide(Depot depot, Shift shift)
    {
        if (Replies.Count == 0)
            return new HandoverAnswered(shift.Van, []);

        var answers = new List<HandoverAnswer>();
        foreach (var question in depot.Setup.Questions)
        {
            if (Replies.FirstOrDefault(r => r.Code == question.Code) is not { } reply)
                return Refusal.NotAnswered(question) with { About = question.Code.Text };

            if (!reply.Yes && Given.Words(T($"what is wrong: {question.Question}"), reply.Why, question.Code + "/why") is { } silent)
                return silent;

            answers.Add(new(question.Code, question.Question, reply.Yes, reply.Yes ? "" : reply.Why.Trim()));
        }

        return new HandoverAnswered(shift.Van, answers);
    }
}
