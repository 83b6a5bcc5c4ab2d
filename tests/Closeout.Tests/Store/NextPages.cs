using Closeout.Facts;
using Closeout.Store;

namespace Closeout.Tests.Store;

/// <summary>Opens the next page of a book.</summary>
internal static class NextPages
{
    /// <summary>The same book, at that page.</summary>
    public static Book Turned(this Book book, PageOpened next, DateTimeOffset at) => book.Record(_ => next, at) is { } refusal
        ? throw new InvalidOperationException(refusal.Text)
        : book;
}
